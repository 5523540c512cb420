package chart

// StripMargin is what is beside a strip's curve, CSS pixels.
const StripMargin = stripSide
