package org.leat.settings;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.leat.check.Settings.PackUse;
import org.leat.design.ElementPath;
import org.leat.file.Position;
import org.leat.file.Positions;

/** One settings file, read. */
record Layer(String name, Path folder, SettingsFile file, Positions positions) {

    /** {@return the packs it asks for; a file's name as it leads from the folder one works in} */
    List<PackUse> packs() {
        List<PackUse> packs = new ArrayList<>();
        for (int i = 0; i < file.packs().size(); i++) {
            packs.add(new PackUse(resolved(file.packs().get(i)), positions.of(ElementPath.named("/packs", null, i))));
        }
        return packs;
    }

    private String resolved(String pack) {
        boolean isFile = pack.endsWith(".jar") || pack.endsWith(".yaml") || pack.endsWith(".yml");
        try {
            return isFile ? folder.resolve(pack).normalize().toString() : pack;
        } catch (InvalidPathException e) {
            return pack;
        }
    }

    /** {@return where the name of a mapping's item stands} */
    Position key(String path) {
        Position key = positions.exactly(path + "/");
        return key == null ? positions.of(path) : key;
    }

    /** {@return file and line, for who set something} */
    String setAt(Position position) {
        return position.file() + ":" + position.line();
    }
}
