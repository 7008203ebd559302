/** Rules of the site: head, stream, frost. */
@NullMarked
package org.leat.pack.site;

import org.jspecify.annotations.NullMarked;
