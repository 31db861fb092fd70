// Package proof holds what the tests of several packages of the core need. Nothing but tests imports it.
package proof
