// Package weigh compares two boats: what differs between a boat that is held and the one
// that stands now, by how much as shown, how far each control moved has brought it about,
// and what of it matters most to a builder. Differences are always those of what is shown.
package weigh
