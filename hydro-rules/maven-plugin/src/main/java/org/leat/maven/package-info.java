/** Checks designs in a Maven build. */
@NullMarked
package org.leat.maven;

import org.jspecify.annotations.NullMarked;
