/** What a physical law answers: a number, or the reason why it must not give one. Uses nothing but the JDK. */
@NullMarked
package org.leat.law;

import org.jspecify.annotations.NullMarked;
