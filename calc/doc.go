// Package calc is the core of Twistbench: what may be typed, what follows from it, and how sure it is.
//
// A Sheet keeps what was typed. Read makes a Plan of quantities from it, Solve works out the other members of each group,
// Results the answers, and Doubts how sure each is; Work does all four. The tables Fields, Groups, Answers and Notes say
// everything else about a number: its key, unit, range, working and advice.
package calc
