// Package raise turns the sides of the bark up, from the bed to the hull, and draws them on
// their way in three quarters view.
package raise
