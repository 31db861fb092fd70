// Package calc is the core of Twistbench: what may be typed, what follows from it, and how sure it is.
//
// A Sheet keeps what was typed. Read makes a Plan of quantities from it, Solve works out the other members of each group,
// results and rest the answers, and doubts how sure each is; State.Work does all that. The tables Fields, Groups, Answers and Notes say
// everything else about a number: its key, unit, range, working and advice.
package calc
