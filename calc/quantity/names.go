package quantity

// Names is a list of names in which the place of one is found in a step or two, however long it is: at each keystroke a page asks for hundreds.
// It holds up to 2000 names.
type Names struct {
	list []string
	at   [1 << 11]uint16 // one more than the place of a name, from where its bytes say on; 0 where none is
}

// Add puts a name at the end of the list. Of two that are the same the first is found.
func (n *Names) Add(name string) {
	n.list = append(n.list, name)
	i := start("", name)
	for n.at[i] != 0 {
		i = after(i)
	}
	n.at[i] = uint16(len(n.list))
}

// Find returns the place of the name that is kind and name together, or -1.
func (n *Names) Find(kind, name string) int {
	for i := start(kind, name); n.at[i] != 0; i = after(i) {
		place := int(n.at[i]) - 1
		if behind, ok := CutPrefix(n.list[place], kind); ok && behind == name {
			return place
		}
	}
	return -1
}

// start returns where the name that is kind and name together is looked for first: by the hash FNV-1a, folded.
func start(kind, name string) int {
	h := uint32(2166136261)
	for _, s := range [...]string{kind, name} {
		for i := range len(s) {
			h = (h ^ uint32(s[i])) * 16777619
		}
	}
	return int(h^h>>16) % len(Names{}.at)
}

func after(i int) int { return (i + 1) % len(Names{}.at) }
