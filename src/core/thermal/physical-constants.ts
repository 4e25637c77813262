/** Stefan–Boltzmann constant in W/(m² K⁴), exact since the SI of 2019. Source: CODATA 2018 and 2022. */
export const stefanBoltzmann = 5.670374419e-8;

/** Planck constant in J s, exact. Source: SI brochure, 9th edition, 2019. */
export const planckConstant = 6.62607015e-34;

/** Speed of light in vacuum in m/s, exact. Source: SI brochure, 9th edition, 2019. */
export const speedOfLight = 299_792_458;

/** Boltzmann constant in J/K, exact. Source: SI brochure, 9th edition, 2019. */
export const boltzmannConstant = 1.380649e-23;

/** Molar gas constant in J/(mol K), exact to the digits given. Source: CODATA 2018 and 2022. */
export const molarGasConstant = 8.314462618;

/** Standard acceleration of free fall in m/s². Source: 3rd General Conference on Weights and Measures, 1901. */
export const standardGravity = 9.80665;

/** Luminous efficacy constant K_cd in lm/W, exact. Source: SI brochure, 9th edition, 2019. */
export const luminousEfficacy = 683;

/** 0 °C in kelvin. */
export const iceZero = 273.15;
