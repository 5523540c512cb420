// Package chart draws curves over two axes, with labels that keep off one another.
package chart
