/** Rules of the wheel that the jets drive. */
@NullMarked
package org.leat.pack.runner;

import org.jspecify.annotations.NullMarked;
