// Package bodies is solids and surfaces with exact answers, for tests.
package bodies
