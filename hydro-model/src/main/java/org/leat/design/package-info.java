/**
 * What the builder chose: one immutable record per component, and the design above them. The records are at the same
 * time the table from which design files are read and written and the JSON Schema is made: component names become
 * field names, {@code @Nullable} means optional (a list is optional unless its limits ask for items),
 * and annotations carry limits and help. Uses {@code quantity} only.
 */
@NullMarked
package org.leat.design;

import org.jspecify.annotations.NullMarked;
