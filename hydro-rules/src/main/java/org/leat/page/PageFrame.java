package org.leat.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.List;
import org.leat.check.Rulebook;
import org.leat.report.SettingsText;
import org.leat.report.Wording;

/** A page of our own begun and ended: its head, its looks, what it may load (nothing), and the caution at both ends. */
final class PageFrame {

    /** Heading of the caution at the top. */
    static final String FIRST = "Caution";

    /** Heading of the caution at the foot. */
    static final String AGAIN = "Caution, once more";

    private static final String RULES = read("page.css");
    private static final String OF_THE_START = read("start.css");

    private PageFrame() {}

    /** Begins a page. */
    static Markup begin(String title) {
        return begin(title, RULES);
    }

    /** Begins the page of a first start, with looks of its own on paper. */
    static Markup beginStart(String title) {
        return begin(title, RULES + OF_THE_START);
    }

    private static Markup begin(String title, String rules) {
        Markup page = new Markup();
        page.open("html", "lang", "en");
        page.open("head");
        page.empty("meta", "charset", "utf-8");
        page.empty(
                "meta",
                "http-equiv",
                "Content-Security-Policy",
                "content",
                "default-src 'none'; style-src 'sha256-" + hash(rules) + "'; base-uri 'none'; form-action 'none'");
        page.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
        page.empty("meta", "name", "color-scheme", "content", "light dark");
        page.empty("meta", "name", "referrer", "content", "no-referrer");
        page.leaf("title", title);
        page.stylesheet(rules);
        page.close();
        page.open("body");
        return page;
    }

    /** {@return the page ended} */
    static String end(Markup page) {
        page.close().close();
        return "<!DOCTYPE html>\n" + page.toString().strip() + "\n";
    }

    /** Writes the caution, at the top of a page under one heading and at its foot under another. */
    static void caution(Markup page, Wording wording, String heading) {
        page.open("section", "class", "caution", "aria-label", heading);
        page.leaf("h2", heading);
        page.leaf("p", wording.phrase("caution").replace('\n', ' '));
        page.close();
    }

    /** Writes at the head of a page what settings loosen of what protects people; nothing where they loosen nothing. */
    static void loosenedFirst(Markup page, Rulebook rulebook) {
        List<String> lines = SettingsText.playedDown(rulebook);
        if (!lines.isEmpty()) {
            page.open("section", "class", "danger").leaf("h2", SettingsText.LOOSENED);
            page.open("ul");
            lines.forEach(line -> page.leaf("li", line));
            page.close().close();
        }
    }

    /** Writes, as the last line of a page, what settings loosen of what protects people; nothing where they loosen nothing. */
    static void loosened(Markup page, Rulebook rulebook) {
        String said = SettingsText.inOneLine(rulebook);
        if (!said.isEmpty()) {
            page.leaf("p", said, "class", "loosened");
        }
    }

    private static String hash(String rules) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(rules.getBytes(StandardCharsets.UTF_8));
            return Base64.getEncoder().encodeToString(digest);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    private static String read(String name) {
        try (InputStream in = PageFrame.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException(name + " is missing");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).replace("\r\n", "\n");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
