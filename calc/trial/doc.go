// Package trial says what a set of readings tells: the straight line through them, the exponential of a body that cools, and how sure both are.
package trial
