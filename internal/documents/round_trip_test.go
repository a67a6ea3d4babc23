package documents

import (
	"encoding/json"
	"errors"
	"testing"
	"time"

	"example.org/zymase/carbonation"
	"example.org/zymase/internal/check"
	"example.org/zymase/nutrient"
	"example.org/zymase/nutrient/ferment"
	"example.org/zymase/nutrient/kinetics"
	"example.org/zymase/nutrient/law"
	"example.org/zymase/nutrient/sugar"
	"example.org/zymase/nutrient/yeast"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
	"example.org/zymase/water/must"
)

// again writes a value, reads it and writes it again: what was read says the same.
func again[T any](t *testing.T, was T) {
	t.Helper()
	text, err := json.Marshal(was)
	var is T
	read := json.Unmarshal(text, &is)
	twice, write := json.Marshal(is)
	if err := errors.Join(err, read, write); err != nil || string(twice) != string(text) || string(text) == "{}" {
		t.Errorf("%T: %v\n%s\n%s", was, err, text, twice)
	}
}

// A batch on its way through a data base: what one package hands to the next comes back.
func TestABatchComesBack(t *testing.T) {
	litres := units.Litre.Of(60)
	wash := sugar.Wash{Fermentable: material.WhiteSugar(), Attenuation: units.Percent.Of(100), Basis: sugar.Kettle(litres, units.Celsius.Of(20))}
	again(t, wash)
	wash.Basis = sugar.WaterAtHand(units.Kilogram.Of(57))
	again(t, wash)
	wash.Basis = sugar.Finished(litres)
	again(t, wash)
	brew := check.Must(wash.For(units.PercentVolume.Of(4.6)))
	again(t, brew)
	again(t, sugar.Of(material.Honey()))
	again(t, nutrient.Offers(material.DiammoniumPhosphate(), material.AutolysedYeast()))
	feed := check.Must(nutrient.FeedInOrder(units.MilligramPerLitre.Of(67), litres, law.US, nutrient.Offers(material.DiammoniumPhosphate())...))
	again(t, feed)
	again(t, check.Must(nutrient.InStages(3, check.Mass(t, "0.1 g"), feed.Doses...)))
	p := check.Must(water.NewProfile(units.Celsius.Of(20), units.MilligramPerLitreCaCO3.Of(38), water.Potassium.At(units.MilligramPerLitre.Of(5))))
	tank := ferment.Tank{Brew: brew, Water: p, Feed: feed.Doses, Additions: 3, Buffer: material.PotassiumBicarbonate().Dose(units.Gram.Of(18)),
		Temperature: units.Celsius.Of(20)}
	again(t, tank)
	again(t, check.Must(tank.Course(3)))
	again(t, ferment.Tank{Brew: brew, Water: p})
	again(t, check.Must(tank.BufferFor(material.PotassiumBicarbonate(), 3.5)))
	pack := check.Must(yeast.DryPack(units.Cells{}, units.Celsius.Of(4)))
	again(t, pack)
	again(t, check.Must(pack.Need(units.BillionCells.Of(400), 30*24*time.Hour)))
	again(t, check.Must(yeast.LiquidPack(units.Cells{})))
	pace := check.Must(kinetics.NewPace(kinetics.Start{Sugar: units.GramPerLitre.Of(80), Nitrogen: units.MilligramPerLitre.Of(120),
		Yeast: units.GramPerLitre.Of(0.4)}, kinetics.Hold{Temperature: units.Celsius.Of(20)}))
	again(t, pace)
	again(t, kinetics.NewForecast(pace))
	again(t, check.Must(carbonation.Compare(brew.Finish, units.Kilopascal.Of(300), units.Celsius.Of(4))))
	again(t, water.DrinkingLimits())
	drink := check.Must(must.New(check.Must(water.NewProfile(units.Celsius.Of(20), units.MilligramPerLitreCaCO3.Of(-3000),
		water.Malate.At(units.GramPerLitre.Of(5)), water.Potassium.At(units.GramPerLitre.Of(1)))), units.PercentVolume.Of(6)))
	again(t, drink)
	again(t, must.ToPH(3.4))
	again(t, must.ToAcidity(units.GramPerLitre.Of(6), water.TartaricAcid.TitratedTo(8.2)))
	again(t, check.Must(drink.WithAcid(water.TartaricAcid, must.ToPH(drink.PH()-0.1))))
}

// What is none, half, or both is refused with an error, and changes nothing.
func TestWhatIsNoneIsRefused(t *testing.T) {
	for _, v := range []any{sugar.Basis{}, yeast.Pack{}, &kinetics.Pace{}, &kinetics.Fit{}, must.Drink{}, must.Aim{}, material.Material{}, nutrient.Offer{}} {
		_, err := json.Marshal(v)
		if _, is := errors.AsType[*units.StateError](err); !is {
			t.Errorf("%T: %v", v, err)
		}
	}
	basis, pack, aim := sugar.Finished(units.Litre.Of(1)), check.Must(yeast.LiquidPack(units.Cells{})), must.ToPH(3)
	was := [...]any{basis, pack, aim}
	for text, into := range map[string]any{
		`{}`: &basis, `{"kettle":"5 L"}`: &basis, `{"finished":"5 L","water":"3 kg"}`: &basis, `{"finished":"5 kg"}`: &basis, `[]`: &basis,
		`{"temperature":"5 °C"}`: &basis,
		`{"form":"dry"}`:         &pack, `{"form":"dry","cells":"10 billion","low":"11 billion","high":"20 billion"}`: &pack, `{"pH":"x"}`: &aim,
		`{"acidity":"5 g/L"}`:                       &aim,
		`{"pH":3,"acidity":"5 g/L","titration":{}}`: &aim, ` {}`: &aim, `{"name":"gold"}`: new(must.Constituent), `{"name":"acidity as gold"}`: new(must.Constituent),
		`{"Substance":"gold"}`: new(water.DrinkingLimit), `{"water":{},"strength":"99 % vol"}`: new(must.Drink), `{"sugar":"1 g/L"}`: new(kinetics.Pace),
		`{"content":"x"}`: new(carbonation.Comparison),
	} {
		if err := json.Unmarshal([]byte(text), into); err == nil {
			t.Errorf("%T: %s is taken", into, text)
		}
	}
	if was != [...]any{basis, pack, aim} {
		t.Error("a refused text changed a value")
	}
}
