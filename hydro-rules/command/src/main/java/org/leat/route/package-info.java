/**
 * The way of a pipe from a recorded track: its shape, never its head. For the command alone, so that nobody who embeds gets the
 * library that reads tracks.
 */
@NullMarked
package org.leat.route;

import org.jspecify.annotations.NullMarked;
