/** Where the published values stand. How each value was had is said with the value. */
export const checkSources = {
	'incropera-a4':
		'F. P. Incropera, D. P. DeWitt, T. L. Bergman, A. S. Lavine, Fundamentals of Heat and Mass Transfer, 6th ed., Wiley 2007, Table A.4 (air, 1 atm)',
	'lemmon-jacobsen':
		'E. W. Lemmon and R. T Jacobsen, ‘Viscosity and thermal conductivity equations for nitrogen, oxygen, argon, and air’, Int. J. Thermophys. 25 (2004) 21-69, table of check values, air at zero density',
	'churchill-chu':
		'S. W. Churchill and H. H. S. Chu, Int. J. Heat Mass Transfer 18 (1975) 1049–1053; textbook example in Bergman, Lavine, Incropera, DeWitt, Introduction to Heat Transfer, 6th ed. 2011; value computed and checked against a textbook by a heat-transfer correlation library',
	morgan:
		'V. T. Morgan, Adv. Heat Transfer 11 (1975) 199–264; value computed and checked against a textbook by a heat-transfer correlation library',
	'holman-7-4': 'J. P. Holman, Heat Transfer, 9th and 10th ed., McGraw-Hill, example 7-4, fine wire in air',
	'incropera-9-4': 'Incropera et al., Fundamentals, 6th ed., Example 9.4',
	'som-8-6': 'S. K. Som, Introduction to Heat Transfer, PHI, Chapter 8, Example 6',
	'churchill-bernstein':
		'S. W. Churchill and M. Bernstein, J. Heat Transfer 99 (1977) 300–306; Incropera Example 7.4 (40.6); value computed and checked against a textbook by a heat-transfer correlation library',
	'som-7-7': 'S. K. Som, Introduction to Heat Transfer, Chapter 7, Example 7',
	'collis-williams': 'D. C. Collis and M. J. Williams, J. Fluid Mech. 6 (1959) 357–384',
	fujii: 'T. Fujii, Me. Fujii, T. Honda, 7th Int. Heat Transfer Conf., Munich 1982, vol. 6, 311–316',
	'own-model': 'The heat model of this site, evaluated apart from it in another language',
	'holman-2-6': 'J. P. Holman, Heat Transfer, example 2-6, heat source with convection',
	'incropera-3-9': 'Incropera et al., Fundamentals, Example 3.9',
	'sukhatme-2-13': 'S. P. Sukhatme, A Textbook on Heat Transfer, Example 2.13(b), p. 73',
	'fin-closed':
		'Closed form of the fin equation with heating: θ(middle) = θ∞ [1 − 1/cosh(mL/2)], θ(mean) = θ∞ [1 − tanh(mL/2)/(mL/2)], θ∞ = I²ρ/(A U), m² = U/(k A)',
	'first-order': 'Closed form of a first-order warm-up: t = τ ln 10, τ = ρ c A/U',
	robertson:
		'CIE 1931 2-degree observer; A. R. Robertson, J. Opt. Soc. Am. 58 (1968) 1528–1535, isotemperature table as in Wyszecki & Stiles, Color Science; looked up in a general colour-science library',
	kelly:
		'K. L. Kelly, J. Opt. Soc. Am. 53 (1963) 999; Wyszecki & Stiles, Color Science, 2nd ed., Planckian locus table; CIE 15',
	'cie-15': 'CIE 15; ISO/CIE 11664-2; value looked up in a general colour-science library',
	srgb: 'IEC 61966-2-1:1999 (sRGB); matrix and transfer function looked up in a general colour-science library',
	draper: 'J. W. Draper, ‘Production of Light by Heat’, Phil. Mag. 1847, 345–359 (977 °F, 525 °C)',
	'cie-planck': 'Planck radiance summed over the CIE 1931 table with 683 lm/W',
	codata: 'CODATA 2018 and 2022 (SI of 2019); read in the constants table of a general numerics library',
	'planck-example':
		'Planck’s law; documented example of a general heat-transfer library, checked there against an independent black-body tool',
	bergman:
		'σ T⁴ and ε σ (T⁴ − Tₛ⁴); textbook example (Bergman, Lavine, Incropera, DeWitt 2011) by a general heat-transfer library',
	'astm-b258': 'ASTM B258: d = 0.127 mm · 92^((36 − n)/39)',
	'iec-60028': 'IEC 60028:1925, international standard of resistance for copper',
	'copper-tables': 'Copper wire tables; IEC 60028 with ASTM B258',
	'copper-linear': 'R = R₂₀ [1 + 0.00393 (t − 20 °C)], after IEC 60028',
	'handbook-wire': 'Handbook wire table for nickel-chromium of 1.08 µΩ·m',
	'iec-60751': 'IEC 60751',
	'jcgm-101-normal': 'JCGM 101:2008, 9.2.2, table 2',
	'jcgm-101-rectangular': 'JCGM 101:2008, 9.2.3, table 3',
	npl: 'NPL report DEM-ES-011, section 9.2',
	'kuehn-goldstein':
		'T. H. Kuehn and R. J. Goldstein, Int. J. Heat Mass Transfer 19 (1976) 1127–1134; value computed and checked against a textbook by a heat-transfer correlation library',
	popiel:
		'C. O. Popiel, J. Wojtkowiak, K. Bober, Exp. Therm. Fluid Sci. 32 (2007) 607–613; value computed and checked against a textbook by a heat-transfer correlation library',
	wyman: 'C. Wyman, P.-P. Sloan, P. Shirley, J. Computer Graphics Techniques 2(2) (2013) 1–11',
	'crc-wire': 'CRC Handbook of Chemistry and Physics, wire tables: resistivities at 0, 20, 25 and 100 °C',
	'gum-h2': 'JCGM 100:2008 (GUM), Annex H.2, tables H.2–H.4',
	'gum-h1': 'JCGM 100:2008, Annex H.1',
	'nist-1900': 'NIST Technical Note 1900, example E13',
} as const;

export type CheckSource = keyof typeof checkSources;
