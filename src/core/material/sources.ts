/** How a citation was had: the text itself or a copy of it was read, or it was written from memory, and so on. */
export type Had = 'looked-up' | 'from-memory' | 'derived' | 'common-practice' | 'own-choice';

export interface Source {
	readonly citation: string;
	readonly had: Had;
	/** Which part was really seen. */
	readonly seen?: string;
}

export const sources = {
	DIN17470: {
		citation:
			'DIN 17470:1984-10, Heizleiterlegierungen; Technische Lieferbedingungen fuer Rund- und Flachdraehte (heating-conductor alloys), property tables',
		had: 'from-memory',
	},
	DIN17471: {
		citation: 'DIN 17471:1983-04, Widerstandslegierungen; Eigenschaften (resistance alloys, properties), entry CuNi44',
		had: 'from-memory',
	},
	ASTMB344: {
		citation:
			'ASTM B344-20 (earlier -01, -11, -14), Standard Specification for Drawn or Rolled Nickel-Chromium and Nickel-Chromium-Iron Alloys for Electrical Heating Elements, section "Nominal resistivity"',
		had: 'from-memory',
	},
	GBT1234: {
		citation:
			'GB/T 1234-1995 and GB/T 1234-2012, High resistance alloys for electrical heating (title translated): alloy property table, resistance-temperature correction factor table, diameter tolerance table',
		had: 'looked-up',
		seen: 'secondary reprint; the standard itself was not seen',
	},
	GOST12766: {
		citation:
			'GOST 12766.1-90, Wire of precision alloys with high electrical resistance, informative table of resistance correction factors (Kh20N80-N, Kh15N60-N, Kh23Yu5T, Kh27Yu5T)',
		had: 'from-memory',
	},
	'EN10088-1': {
		citation:
			'EN 10088-1 (BS EN 10088-1), Stainless steels - Part 1: List of stainless steels, Annex tables of physical properties (reference data)',
		had: 'looked-up',
		seen: 'secondary reprint',
	},
	'EN1993-1-2': {
		citation:
			'EN 1993-1-2:2005 (Eurocode 3, fire), 3.4.1 carbon steel: specific heat (3.4.1.2), conductivity (3.4.1.3), elongation (3.4.1.1)',
		had: 'looked-up',
		seen: 'secondary: the c(T) formula was read; k(T) and elongation from memory',
	},
	IEC60028: {
		citation:
			'IEC 60028:1925, International standard of resistance for copper (annealed copper: 1/58 ohm mm2/m at 20 °C, density 8.89 g/cm3, alpha20 = 0.00393 1/K)',
		had: 'looked-up',
		seen: 'secondary: the 1/58 value and 8.89 g/cm3 were read; alpha from memory',
	},
	JISC2521: {
		citation:
			'JIS C 2521:1999, Copper-nickel alloy wires for electrical resistance (class CN49: 0.49 µΩ·m); foreword states IEC 60182-4 range 0.020-6.30 mm and its withdrawal in 1990',
		had: 'looked-up',
		seen: 'first part of the standard and its explanatory table; the numeric annex tables were not reached',
	},
	'CRC-wire': {
		citation:
			'CRC Handbook of Chemistry and Physics (ed. about 87-90), section 15 "Wire Tables" (resistivities at 0, 20, 25, 100 °C and ohm/m by B&S gauge), p. 15-37',
		had: 'looked-up',
		seen: 'primary text of the table head and first rows',
	},
	'CRC-resistivity': {
		citation: 'CRC Handbook of Chemistry and Physics, section 12 "Electrical Resistivity of Pure Metals" (273-900 K)',
		had: 'from-memory',
	},
	MATULA: {
		citation:
			'R. A. Matula, Electrical resistivity of copper, gold, palladium and silver, J. Phys. Chem. Ref. Data 8 (4), 1147 (1979)',
		had: 'looked-up',
		seen: 'secondary data file citing Matula; 10-400 K only',
	},
	'WHITE-MINGES': {
		citation:
			'G. K. White and M. L. Minges, Thermophysical properties of some key solids: an update, Int. J. Thermophys. 18, 1269 (1997), tungsten resistivity and specific heat, as given by TOLIAS',
		had: 'looked-up',
		seen: 'secondary: polynomials read',
	},
	TOLIAS: {
		citation:
			'P. Tolias and the EUROfusion MST1 team, Analytical expressions for thermophysical properties of solid and liquid tungsten relevant for fusion applications, Nucl. Mater. Energy 13, 42 (2017)',
		had: 'looked-up',
		seen: 'secondary: polynomials for rho, cp, k (after Hust and Lankford, NBSIR 84-3007), density and total hemispherical emissivity (after Matsumoto et al. 1999 and the ITER handbook) read',
	},
	'MILOSEVIC-TI': {
		citation:
			'N. D. Milosevic and K. D. Maglic, Thermophysical properties of solid phase titanium in a wide temperature range, High Temp.-High Press. 37, 187-204 (2008)',
		had: 'looked-up',
		seen: 'secondary: polynomial read',
	},
	CINCOTTI: {
		citation:
			'A. Cincotti, A. M. Locci, R. Orru, G. Cao, Modeling of SPS apparatus: temperature, current and strain distribution with no powders, AIChE J. 53, 703 (2007), AISI 304 resistivity, refitted as a cubic',
		had: 'looked-up',
		seen: 'secondary: fitted polynomial read',
	},
	'ITER-MPH-316': {
		citation:
			'ITER Material Properties Handbook, ITER-AA04-3201, Type 316L(N)-IG, Electrical resistivity, publication package 8, p. 1, Table 1 (collects D. Peckner 1977, T. Chu 1978 / R. H. Bogaard 1993, S. Fabritsiev 2004, K. Mergia 2005, EN 10088-1)',
		had: 'looked-up',
		seen: 'primary text, p. 1; columns 20-350 °C legible, higher temperatures cut off',
	},
	MILLS: {
		citation:
			'K. C. Mills, Recommended Values of Thermophysical Properties for Selected Commercial Alloys, Woodhead (2002), type 316, as fitted in the MOOSE solid-properties module',
		had: 'looked-up',
		seen: 'secondary: fits for k, cp, density and the two emissivity constants read',
	},
	'ORNL-FECRAL': {
		citation:
			'K. G. Field et al., Handbook on the Material Properties of FeCrAl Alloys for Nuclear Power Production Applications, ORNL/TM-2017/186 and ORNL/SPR-2018/905',
		had: 'looked-up',
		seen: 'secondary: k(T) coefficients for four compositions read; specific-heat coefficients were cut off',
	},
	'NIST-JANAF': {
		citation:
			'M. W. Chase, NIST-JANAF Thermochemical Tables, 4th ed. (1998), Shomate coefficients as in the NIST Chemistry WebBook',
		had: 'looked-up',
		seen: 'secondary: coefficients read; they reproduce the remembered WebBook values',
	},
	'INCROPERA-A1': {
		citation:
			'F. P. Incropera, D. P. DeWitt, T. L. Bergman, A. S. Lavine, Fundamentals of Heat and Mass Transfer (6th/7th ed.), Table A.1, Thermophysical Properties of Selected Metallic Solids',
		had: 'from-memory',
	},
	'INCROPERA-A11': {
		citation:
			'F. P. Incropera, D. P. DeWitt, T. L. Bergman, A. S. Lavine, Fundamentals of Heat and Mass Transfer (6th/7th ed.), Table A.11, Total, normal (n) or hemispherical (h) emissivity of selected surfaces',
		had: 'from-memory',
	},
	'INSTREF-14.16': {
		citation:
			'W. Boyes (ed.), Instrumentation Reference Book, 3rd ed., Butterworth-Heinemann (2003), Table 14.16 "Total emissivity of miscellaneous materials", p. 284; the table credits Temperature: Its Measurement and Control in Science and Industry, AIP / Reinhold (1941)',
		had: 'looked-up',
		seen: 'primary page text (OCR)',
	},
	'PARKER-ABBOTT': {
		citation:
			'W. J. Parker and G. L. Abbott, Total emittance of metals, in Symposium on Thermal Radiation of Solids, NASA SP-55 (1965); formula as in R. Siegel and J. R. Howell, Thermal Radiation Heat Transfer: eps_h = 0.766 sqrt(x) - (0.309 - 0.0889 ln x) x - 0.0175 x^1.5, x = rho T in ohm cm K, for 0 < x < 0.2',
		had: 'from-memory',
	},
	'DMIC-177': {
		citation:
			'Battelle DMIC Report 177 (1962), Thermal radiative properties of selected materials: titanium oxidised at about 540 °C',
		had: 'from-memory',
	},
	'ASM-STAINLESS': {
		citation:
			'ASM Metals Handbook vol. 1 / D. Peckner and I. M. Bernstein, Handbook of Stainless Steels (1977): types 302/304, 72 µΩ·cm at 20 °C and 116 at 650 °C; type 316, 74 and 116',
		had: 'from-memory',
	},
	'NPL-STEELS': {
		citation:
			'Physical Constants of Some Commercial Steels at Elevated Temperatures, BISRA/NPL, Butterworths (1953), 0.06 % C steel; reprinted in Smithells Metals Reference Book and ASM tables as 1008-type steel',
		had: 'from-memory',
	},
	SSINA: {
		citation:
			'Specialty Steel Industry of North America, web chapter "High temperature properties" (304 and 316 usable to 1700 °F)',
		had: 'looked-up',
		seen: 'primary text',
	},
	'KAYE-LABY': {
		citation:
			'G. W. C. Kaye and T. H. Laby, Tables of Physical and Chemical Constants, 2.6.1 electrical resistivities (273, 373, 573, 973, 1473 K)',
		had: 'from-memory',
	},
	'ENC-CUNI': {
		citation:
			'Encyclopedia article on the 55Cu-45Ni resistance alloy (density 8885 kg/m3, melting 1210 °C, 21.2 W/(m K), 390 J/(kg K), 0.49 µΩ·m)',
		had: 'looked-up',
		seen: 'secondary',
	},
	OURS: {
		citation: 'Computed for this site from the other cited values',
		had: 'derived',
	},
	COMMON: {
		citation: 'Common practice in workshops and trade literature; no source that could be cited',
		had: 'common-practice',
	},
	'CRC-expansion': {
		citation:
			'CRC Handbook of Chemistry and Physics, section 12, Thermal and Physical Properties of Pure Metals (linear expansion near 25 °C: W 4.5, Ti 8.6, Fe 11.8, Ni 13.4, Cu 16.5 e-6/K; densities)',
		had: 'from-memory',
	},
	'CRC-elements': {
		citation: 'CRC Handbook of Chemistry and Physics, melting and boiling points of the elements',
		had: 'from-memory',
	},
	WORKSHOP: {
		citation: 'Limit of the workshop in this course, below the highest element temperature of the standards',
		had: 'own-choice',
	},
} as const satisfies Record<string, Source>;

export type SourceKey = keyof typeof sources;
