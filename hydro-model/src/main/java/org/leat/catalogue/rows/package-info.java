/**
 * What rows of the tables say: a size of plastic pipe with its wall and rating, a standard, a material, a value with its
 * spread. Numbers are in SI. May use {@code law} and {@code design}.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
@NullMarked
package org.leat.catalogue.rows;

import org.apiguardian.api.API;
import org.jspecify.annotations.NullMarked;
