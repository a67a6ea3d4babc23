package shelf_test

import (
	"testing"

	"example.org/zymase/internal/shelf"
	"example.org/zymase/units/material"
)

func TestShelf(t *testing.T) {
	list := shelf.Materials("gypsum", "CaCO3")
	if len(list) != 2 || list[0] != material.Gypsum() || list[1] != material.Chalk() {
		t.Error(list)
	}
	defer func() {
		if recover() == nil {
			t.Error("a name that is none is taken")
		}
	}()
	shelf.Material("gypsun")
}
