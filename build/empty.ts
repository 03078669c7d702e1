/** Stands in for packages that another package could load but never does here. */
export default {};
