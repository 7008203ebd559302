package org.leat.report;

/** A text that never grows beyond a length. */
final class BoundedText {

    /** Kept free for short lines that must be told, such as how much is not shown. */
    private static final int SPARE = 1000;

    private final StringBuilder text = new StringBuilder();
    private int left;

    BoundedText(int longest) {
        this.left = longest - SPARE;
    }

    /** Keeps room for something that is to come for certain. */
    void reserve(int characters) {
        left -= characters;
    }

    boolean fits(int characters) {
        return characters <= left;
    }

    /** {@return whether it fits; only then it is added} */
    boolean ifFits(String more) {
        if (!fits(more.length())) {
            return false;
        }
        left -= more.length();
        text.append(more);
        return true;
    }

    /** Adds what was reserved or is short. */
    void always(String more) {
        text.append(more);
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
