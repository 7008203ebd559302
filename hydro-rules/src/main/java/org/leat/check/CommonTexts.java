package org.leat.check;

import java.util.Map;
import java.util.TreeMap;

/** The texts of messages that any rule's outcome may carry, and of the plant's reasons. */
final class CommonTexts {

    private CommonTexts() {}

    static Map<String, String> read() {
        Map<String, String> texts = new TreeMap<>(TextFile.read(CommonTexts.class, "common.properties"));
        texts.putAll(TextFile.read(CommonTexts.class, "plant.properties"));
        return texts;
    }
}
