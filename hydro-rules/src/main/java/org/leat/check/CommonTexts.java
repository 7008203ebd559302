package org.leat.check;

import java.util.Map;

/** The texts of messages that any rule's outcome may carry. */
final class CommonTexts {

    private CommonTexts() {}

    static Map<String, String> read() {
        return TextFile.read(CommonTexts.class, "common.properties");
    }
}
