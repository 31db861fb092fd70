package craft

// Mark says how a figure or a relation reached us.
type Mark uint8

const (
	Defined    Mark = iota // a definition, geometry or plain statics: nothing to look up
	Read                   // read in the source named
	FromMemory             // recalled; a default to overwrite
	Practice               // common practice, no source
	Derived                // worked out from the relations on this page
)

// Source is where an equation or a figure is from. Cite is language-free: author, journal or title, year, DOI. It is empty
// for what needs no citation, where Mark alone says it.
type Source struct {
	Cite string
	Mark Mark
}

var (
	Geometry = Source{Mark: Defined}
	Common   = Source{Mark: Practice}
	Memory   = Source{Mark: FromMemory}
	Worked   = Source{Mark: Derived}

	LinearUnits  = Source{Cite: "ISO 1144", Mark: Read}
	FibreTables  = Source{Cite: "Morton & Hearle, Physical Properties of Textile Fibres, 4th ed., 2008, table 5.1", Mark: Read}
	MeltTable    = Source{Cite: "Bunsell (ed.), Handbook of Properties of Textile and Technical Fibres, 2nd ed., 2018, table 12.3", Mark: Read}
	DrySetting   = Source{Cite: "Tsuruta et al., J. Appl. Polym. Sci., 1965, doi:10.1002/app.1965.070090102", Mark: Read}
	HeatTables   = Source{Cite: "Morton & Hearle, Physical Properties of Textile Fibres, 4th ed., 2008, table 6.1", Mark: Read}
	LeastSquares = Source{Cite: "JCGM 100:2008, H.3", Mark: Read}
	SetRetention = Source{Cite: "Bunsell (ed.), Handbook of Properties of Textile and Technical Fibres, 2nd ed., 2018, p. 395", Mark: Read}

	IdealYarn     = Source{Cite: "Hearle, Grosberg & Backer, Structural Mechanics of Fibers, Yarns, and Fabrics, 1969", Mark: FromMemory}
	LinkTheorem   = Source{Cite: "Fuller, Proc. Natl. Acad. Sci. USA 68:815, 1971, doi:10.1073/pnas.68.4.815", Mark: FromMemory}
	RodTheory     = Source{Cite: "Love, A Treatise on the Mathematical Theory of Elasticity, 4th ed., 1927, art. 272", Mark: FromMemory}
	TorsionTables = Source{Cite: "Morton & Hearle, Physical Properties of Textile Fibres, 4th ed., 2008", Mark: FromMemory}
	SelfCoil      = Source{Cite: "Science 343:868, 2014, doi:10.1126/science.1246906", Mark: FromMemory}

	HeatTheory     = Source{Cite: "Incropera et al., Fundamentals of Heat and Mass Transfer, 6th ed., 2007", Mark: FromMemory}
	AirTables      = Source{Cite: "Lemmon & Jacobsen, Int. J. Thermophys. 25:21, 2004", Mark: FromMemory}
	AirOfAltitude  = Source{Cite: "ISO 2533:1975", Mark: FromMemory}
	LyingCylinder  = Source{Cite: "Churchill & Chu, Int. J. Heat Mass Transfer 18:1049, 1975", Mark: FromMemory}
	SlenderBody    = Source{Cite: "Popiel et al., Exp. Therm. Fluid Sci., 2007, doi:10.1016/j.expthermflusci.2007.07.003", Mark: FromMemory}
	StreamCylinder = Source{Cite: "Churchill & Bernstein, J. Heat Transfer 99:300, 1977, doi:10.1115/1.3450685", Mark: Read}
	StepPair       = Source{Cite: "Bogacki & Shampine, Appl. Math. Lett. 2:321, 1989", Mark: FromMemory}

	TouchLong  = Source{Cite: "ISO 13732-1:2006", Mark: FromMemory}
	TouchBrief = Source{Cite: "ISO 13732-1:2006, 4.2.1.2", Mark: Read}
	LowVoltage = Source{Cite: "IEC 61140; IEC 61558-1, 3.7.16", Mark: Read}
	WetSkin    = Source{Cite: "IEC 61201", Mark: Read}

	Copper      = Source{Cite: "IEC 60028, 1925", Mark: FromMemory}
	WireGauge   = Source{Cite: "ASTM B258", Mark: FromMemory}
	USBPort     = Source{Cite: "USB 2.0, 2000; USB 3.2, 2017; USB Type-C", Mark: FromMemory}
	FuseRatings = Source{Cite: "IEC 60127-1", Mark: FromMemory}

	Springs     = Source{Cite: "Wahl, Mechanical Springs, 2nd ed., 1963", Mark: FromMemory}
	SpringWires = Source{Cite: "Bhandari, Design of Machine Elements, ch. 10; Shigley, Mechanical Engineering Design, ex. 10-1", Mark: FromMemory}
	SteepSpring = Source{Cite: "Timoshenko, Strength of Materials, part II", Mark: FromMemory}
	LoadStudy   = Source{Cite: "Wu & Zheng, A modeling of twisted and coiled polymer artificial muscles based on elastic rod theory, Actuators, 2020", Mark: Read}
	StrokeCurve = Source{Cite: "Nylon coil actuator operating temperature range and stiffness, Proc. SPIE", Mark: Read}
)
