package main

// course returns the chapters in the order in which a course would take them.
func course() []Chapter {
	return []Chapter{
		unitsChapter(), densityChapter(), gravityChapter(), strengthChapter(), fermentChapter(), dilutionChapter(), labelChapter(), waterChapter(),
		acidChapter(), gasChapter(), kegChapter(), bottleChapter(), serviceChapter(),
		sugarChapter(), nitrogenChapter(), fermentPHChapter(), forecastChapter(), stabiliseChapter(), mustChapter(), cellarChapter(),
		uncertaintyChapter(),
	}
}
