package org.leat.report;

/** Text of unknown origin as Markdown that shows it and nothing else: no markup, no link, nobody called by name. */
final class MarkdownText {

    private static final String MARKUP = "\\`*_[]<>&|@#~$";

    private MarkdownText() {}

    static String of(String text) {
        StringBuilder out = new StringBuilder();
        String plain = PlainText.of(text);
        for (int i = 0; i < plain.length(); i++) {
            char c = plain.charAt(i);
            boolean www = c == '.' && i >= 3 && plain.regionMatches(true, i - 3, "www", 0, 3);
            boolean link = www || plain.startsWith("://", i);
            if (MARKUP.indexOf(c) >= 0 || link) {
                out.append("&#").append((int) c).append(';');
            } else {
                out.append(c);
            }
        }
        return out.toString();
    }
}
