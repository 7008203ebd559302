/**
 * The plant as one machine: a design turned into SI numbers with every default written down, and solved in each
 * situation that matters. Uses the design, the catalogue and the laws of water, wheel and electricity; knows no file.
 */
@NullMarked
package org.leat.plant;

import org.jspecify.annotations.NullMarked;
