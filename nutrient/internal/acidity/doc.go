// Package acidity holds a fermented liquid as its pH sees it.
package acidity
