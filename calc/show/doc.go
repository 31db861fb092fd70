// Package show turns a worked plan into what the page shows: texts, marks and drawings, each in a slot with a name.
//
// A slot is (id, what, value): what is "t" for a text, "v" for what a box holds, "s" for a state, "h" for hidden, and anything else is an
// attribute of a drawing. All slots of a plan are appended into one buffer, always the same slots in the same order, so that Changes
// can tell which differ from those of the plan before. The build fills the page with the same slots before any script runs.
package show
