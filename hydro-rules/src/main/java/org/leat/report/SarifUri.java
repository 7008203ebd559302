package org.leat.report;

import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;

/** File names as the relative, percent-encoded URIs of SARIF: never an absolute path, never a leading {@code ./}. */
final class SarifUri {

    private SarifUri() {}

    /** {@return the URI of a file named from the folder one works in} */
    static String of(String file) {
        String path = relative(file).replace('\\', '/');
        try {
            String uri = new URI(null, null, "/" + path, null).toASCIIString().substring(1);
            // a colon in the first segment would read as a scheme
            int slash = uri.indexOf('/');
            String first = slash < 0 ? uri : uri.substring(0, slash);
            return first.replace(":", "%3A") + (slash < 0 ? "" : uri.substring(slash));
        } catch (URISyntaxException e) {
            return "unnamed";
        }
    }

    private static String relative(String file) {
        try {
            Path path = Path.of(file);
            if (path.isAbsolute()) {
                Path here = Path.of("").toAbsolutePath();
                if (!path.startsWith(here)) {
                    return String.valueOf(path.getFileName());
                }
                path = here.relativize(path);
            }
            return path.normalize().toString();
        } catch (InvalidPathException e) {
            return file;
        }
    }

    /** {@return a path as it is; an absolute one from the folder that is worked in, or else without its folder} */
    static String withoutFolder(String argument, String redacted) {
        if (!argument.startsWith("/") && !argument.matches("[A-Za-z]:[\\\\/].*") && !argument.startsWith("\\\\")) {
            return argument;
        }
        String inside = relative(argument).isEmpty() ? "." : relative(argument).replace('\\', '/');
        String last = inside.substring(inside.lastIndexOf('/') + 1);
        return isHere(argument) ? inside : redacted + "/" + last;
    }

    private static boolean isHere(String file) {
        try {
            return Path.of(file).startsWith(Path.of("").toAbsolutePath());
        } catch (InvalidPathException e) {
            return false;
        }
    }
}
