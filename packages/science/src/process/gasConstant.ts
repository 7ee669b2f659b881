/** R in J/(mol K), exact since 2019: the Boltzmann constant times the Avogadro constant. */
export const gasConstant = 8.314462618;
