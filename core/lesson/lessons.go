package lesson

// lessons are all of them, in their order.
var lessons = [...]Lesson{depth, gores, frame, rocker, sheet, stem, root, endRibs, leave, log}
