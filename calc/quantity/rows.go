package quantity

// Rows is the text of rows of two numbers, as it was typed or pasted, and how many of them were read. Its SI value is that number, NaN where
// the text can't be used.
type Rows struct {
	_ [0]func() // rows are not compared

	N    float64 // comes first: see Ref
	Text string
}

// KindRows is the kind of Rows.
var KindRows = &Kind{Name: "rows", Style: StyleRows}

func (*Rows) Kind() *Kind       { return KindRows }
func (v *Rows) SI() float64     { return v.N }
func (v *Rows) SetSI(x float64) { v.N = x }
