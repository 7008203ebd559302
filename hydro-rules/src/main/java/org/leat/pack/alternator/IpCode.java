package org.leat.pack.alternator;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A housing's degrees of protection, IEC 60529, as marked: {@code IP54}, or several as in {@code IP66/IP67}.
 *
 * @param dust the greatest first numeral; nil where it is left open
 * @param splash the greatest second numeral
 * @param jets the greatest second numeral that stands for water jets: those above 6 do not
 */
record IpCode(int dust, int splash, int jets) {

    private static final Pattern CODE = Pattern.compile("(?:IP ?)?([0-6X])([0-9X])[A-DHMSW]*");
    private static final int MOST_FOR_JETS = 6;

    /** {@return the code; empty where the text is none, or tells nothing of water} */
    static Optional<IpCode> of(String text) {
        IpCode code = new IpCode(0, 0, 0);
        boolean water = false;
        for (String part : text.strip().split(" ?/ ?", -1)) {
            Matcher m = CODE.matcher(part);
            if (!m.matches()) {
                return Optional.empty();
            }
            int second = numeral(m.group(2));
            code = new IpCode(
                    Math.max(code.dust(), numeral(m.group(1))),
                    Math.max(code.splash(), second),
                    Math.max(code.jets(), second <= MOST_FOR_JETS ? second : 0));
            water |= !m.group(2).equals("X");
        }
        return water ? Optional.of(code) : Optional.empty();
    }

    private static int numeral(String text) {
        return text.equals("X") ? 0 : Integer.parseInt(text);
    }
}
