/**
 * Settings files: reading them with the files they build on, and their JSON Schema. Every value keeps the file and line
 * it came from. Uses the model's reader and the checker's types.
 */
@NullMarked
package org.leat.settings;

import org.jspecify.annotations.NullMarked;
