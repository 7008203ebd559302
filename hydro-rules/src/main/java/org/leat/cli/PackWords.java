package org.leat.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.leat.check.Packs;
import org.leat.check.RulePack;
import org.leat.file.Names;

/** What a person writes to name a rule pack. */
final class PackWords {

    private PackWords() {}

    /**
     * {@return the packs that a word names: a jar's, or the one of that name on the class path}
     *
     * @param folder from which a file's name leads
     * @throws IOException if a file cannot be read
     * @throws IllegalArgumentException if there is no such pack
     */
    static List<RulePack> packs(String word, Path folder) throws IOException {
        if (word.endsWith(".jar")) {
            return Packs.inJar(folder.resolve(word));
        }
        List<RulePack> found = Packs.found(Packs.class.getClassLoader());
        List<RulePack> named =
                found.stream().filter(pack -> pack.name().equals(word)).toList();
        if (named.isEmpty()) {
            String nearest =
                    Names.nearest(word, found.stream().map(RulePack::name).toList());
            throw new IllegalArgumentException("no file of rules and no pack on the class path is called so"
                    + (nearest.isEmpty() ? "" : "; nearest is " + nearest));
        }
        return named;
    }
}
