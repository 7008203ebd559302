/** Rules of the charge regulator. */
@NullMarked
package org.leat.pack.regulator;

import org.jspecify.annotations.NullMarked;
