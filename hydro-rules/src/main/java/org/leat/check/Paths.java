package org.leat.check;

import org.apiguardian.api.API;
import org.leat.design.ElementPath;

/** Paths as people read them. */
@API(status = API.Status.INTERNAL, since = "0.1")
public final class Paths {

    private Paths() {}

    /** {@return a place as reports show it, be it given so or as a path} */
    public static String plain(String place) {
        return place.startsWith("/") ? shown(place) : place;
    }

    /** {@return a path as reports show it: {@code penstock.sections[run].pipe.sdr}; "the design" for the whole of it} */
    public static String shown(String path) {
        return path.equals(ElementPath.ROOT)
                ? "the design"
                : path.substring(1)
                        .replace('/', '.')
                        .replace("~3", "]")
                        .replace("~2", "[")
                        .replace("~1", "/")
                        .replace("~0", "~");
    }
}
