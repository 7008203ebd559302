package org.leat.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.leat.check.Packs;
import org.leat.check.RulePack;
import org.leat.file.Names;
import org.leat.rulefile.RuleFile;
import org.leat.rulefile.RuleFile.RuleFileReading;

/** What a person writes to name a rule pack. */
final class PackWords {

    private PackWords() {}

    /**
     * {@return the packs that a word names: a jar's, a rule file's, or the one of that name on the class path}
     *
     * @param folder from which a file's name leads
     * @throws IOException if a file cannot be read
     * @throws IllegalArgumentException if there is no such pack
     * @throws WrongInput if a rule file has problems
     */
    static List<RulePack> packs(String word, Path folder) throws IOException {
        if (word.endsWith(".jar")) {
            return Packs.inJar(folder.resolve(word));
        }
        if (word.endsWith(".yaml") || word.endsWith(".yml") || word.endsWith(".json")) {
            return List.of(written(folder.resolve(word)));
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

    /** On its own, so that nothing of expressions is loaded unless a rule file is named. */
    private static RulePack written(Path file) {
        RuleFileReading reading = RuleFile.read(file);
        RulePack pack = reading.pack();
        if (pack == null) {
            throw new WrongInput(reading.problems());
        }
        return pack;
    }
}
