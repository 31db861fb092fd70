// Package trial says what a set of readings tells: for now, the straight line through them.
package trial
