package org.leat.catalogue.rows;

import org.apiguardian.api.API;

/**
 * A table that belongs to this artifact is not there or cannot be read: the artifact was repacked without it, or with
 * another version of a library than it was built with.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class CatalogueException extends IllegalStateException {

    private static final long serialVersionUID = 1L;

    /**
     * Made where a table is read.
     *
     * @param table its file
     * @param why it cannot be read
     */
    public CatalogueException(String table, String why) {
        super("the table " + table + " of the catalogue cannot be read: " + why);
    }

    /**
     * Made where a table is read.
     *
     * @param table its file
     * @param cause what reading it ended with
     */
    public CatalogueException(String table, Throwable cause) {
        super("the table " + table + " of the catalogue cannot be read: " + cause.getMessage(), cause);
    }
}
