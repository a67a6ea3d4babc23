package catalogue

import (
	"time"

	"example.org/zymase/nutrient"
	"example.org/zymase/nutrient/yeast"
	"example.org/zymase/units"
)

// nutrientFeed are nitrogen, its sources, and yeast.
func nutrientFeed() []Function {
	sources := nutrient.Sources()
	fresh, _ := yeast.DryPack(yeast.Cells{}, units.Celsius.Of(4)) // what the library counts on
	cells, _ := fresh.Alive(0)
	usual := cells.Billion()
	demands := [...]nutrient.Demand{nutrient.LowDemand, nutrient.MediumDemand, nutrient.HighDemand}
	return []Function{
		{
			Name:    "nitrogen_need",
			Meaning: "nitrogen that yeast needs for the sugar of a wash",
			Source:  "rule of the wine trade, 0.75, 0.9 and 1.25 mg of N for 1 g of sugar",
			Inputs: []Input{
				in("sugar", units.GramPerLitre, "sugar to ferment in a litre", 0, 350, 75),
				choice("demand", "of the strain", "low", "medium", "high").orOption("medium"),
			},
			Outputs: []Output{
				out("nitrogen", units.MilligramPerLitre, "yeast assimilable nitrogen, as N"),
				out("least", units.MilligramPerLitre, "the same for a strain of low demand"),
				out("most", units.MilligramPerLitre, "the same for a strain of high demand"),
			},
			call: func(in, out []float64) error {
				n, err := nutrient.NeedBySugar(as(units.GramPerLitre, in[0]), demands[int(in[1])])
				out[0], out[1], out[2] = n.Nitrogen.Value.In(units.MilligramPerLitre), n.Nitrogen.Low.In(units.MilligramPerLitre), n.Nitrogen.High.In(units.MilligramPerLitre)
				return err
			},
		},
		entry("nitrogen_assimilable", "yeast assimilable nitrogen from ammonia and amino nitrogen as a laboratory reports them", "Australian Wine Research Institute, yeast assimilable nitrogen: 0.8225·NH3 + alpha-amino N",
			of2(takes("ammonia", units.MilligramPerLitre, "ammonia as NH3", 0, 1e5, 50), takes("amino", units.MilligramPerLitre, "alpha-amino nitrogen, as N", 0, 1e5, 80), nutrient.Assimilable),
			gives("nitrogen", units.MilligramPerLitre, "yeast assimilable nitrogen, as N")),
		{
			Name:    "nutrient_brings",
			Meaning: "what a mass of a nutrient brings to a volume",
			Source:  "composition from CIAAW atomic weights 2021, or the label as package nutrient cites it",
			Inputs: []Input{
				choice("source", "which nutrient", wordsOf(sources)...),
				in("mass", units.Gram, "the nutrient as weighed", 0, 1e9, 30),
				in("volume", units.Litre, "of the wash", 0.001, 1e9, 60),
			},
			Outputs: []Output{
				out("nitrogen", units.MilligramPerLitre, "nitrogen in all its forms, as N"),
				out("ammonium_nitrogen", units.MilligramPerLitre, "nitrogen as ammonium, as N"),
				out("phosphorus", units.MilligramPerLitre, "phosphorus, as P"),
				out("potassium", units.MilligramPerLitre, "potassium"),
				out("magnesium", units.MilligramPerLitre, "magnesium"),
				out("zinc", units.MilligramPerLitre, "zinc"),
				out("sulfate", units.MilligramPerLitre, "sulfate"),
				out("chloride", units.MilligramPerLitre, "chloride"),
			},
			call: func(in, out []float64) error {
				s, err := nutrient.SupplyOf(as(units.Litre, in[2]), sources[int(in[0])].Dose(as(units.Gram, in[1])))
				if err != nil {
					return err
				}
				for i, q := range [...]units.MassConcentration{s.Nitrogen(), s.Ammonium, s.Phosphorus, s.Potassium, s.Magnesium, s.Zinc, s.Sulfate, s.Chloride} {
					out[i] = q.In(units.MilligramPerLitre)
				}
				return nil
			},
		},
		{
			Name:    "yeast_to_pitch",
			Meaning: "live cells to pitch, and the dry yeast that holds them",
			Source:  "1 million cells for 1 mL and 1 °P (Briggs et al. 2004; Kunze); cells in dry yeast as package nutrient cites them",
			Inputs: []Input{
				in("volume", units.Litre, "of the wash", 0.001, 1e9, 60),
				in("extract", units.DegreePlato, "of the wash", 0.1, 40, 7.5),
				number("rate", "", "million cells for 1 mL and 1 °P", 0.1, 5, 1).or(1),
				number("per_gram", "", "billion live cells in 1 g of dry yeast, 5 to 25 as sold; the label counts", 1, 50, usual).or(usual),
			},
			Outputs: []Output{
				billion("cells", "live cells"),
				out("dry_yeast", units.Gram, "dry yeast to weigh, fresh"),
			},
			heavy: true,
			call: func(in, out []float64) error {
				rate, err := yeast.MillionPerPlato(in[2])
				if err != nil {
					return err
				}
				cells, err := yeast.CellsToPitch(rate, as(units.DegreePlato, in[1]), as(units.Litre, in[0]))
				if err != nil {
					return err
				}
				gram, err := yeast.Billion(in[3])
				if err != nil {
					return err
				}
				pack, err := yeast.DryPack(gram, units.Celsius.Of(4))
				if err != nil {
					return err
				}
				p, err := pack.Need(cells, time.Duration(0))
				out[0], out[1] = cells.Billion(), p.Mass.In(units.Gram)
				return err
			},
		},
	}
}
