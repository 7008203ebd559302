package org.leat.page;

import java.io.StringWriter;
import java.util.Set;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import org.leat.report.PlainText;

/**
 * HTML and SVG put together element by element by the JDK's XML writer. Whatever text it is given is text in the page: it
 * cannot end a tag, open one, or turn the direction of writing.
 */
final class Markup {

    private static final Set<String> ON_A_LINE_OF_THEIR_OWN = Set.of(
            "head",
            "body",
            "meta",
            "title",
            "style",
            "header",
            "nav",
            "main",
            "section",
            "footer",
            "h1",
            "h2",
            "h3",
            "p",
            "ul",
            "ol",
            "li",
            "dl",
            "figure",
            "figcaption",
            "div",
            "article",
            "table",
            "thead",
            "tbody",
            "tr",
            "svg",
            "g",
            "path",
            "rect",
            "circle",
            "text",
            "details",
            "dt",
            "dd",
            "th",
            "td",
            "caption");

    private final StringWriter text = new StringWriter();
    private final XMLStreamWriter xml;

    Markup() {
        try {
            xml = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(text);
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Begins an element. Attributes as name, value, name, value; one whose value is "" is left out. */
    Markup open(String element, String... attributes) {
        try {
            line(element);
            xml.writeStartElement(element);
            attributes(attributes);
            return this;
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Ends the element begun last. */
    Markup close() {
        try {
            xml.writeCharacters("");
            xml.writeEndElement();
            return this;
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Writes an element that holds nothing: one of SVG, or one that HTML knows as empty. */
    Markup empty(String element, String... attributes) {
        try {
            line(element);
            xml.writeEmptyElement(element);
            attributes(attributes);
            return this;
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Writes text, on one line, with what cannot be seen as its code. */
    Markup text(String said) {
        return written(PlainText.of(said));
    }

    /** Writes an element that holds a text. */
    Markup leaf(String element, String said, String... attributes) {
        return open(element, attributes).text(said).close();
    }

    /** Writes a stylesheet of our own; HTML reads it to its end tag, so it must do without what XML would escape. */
    Markup stylesheet(String rules) {
        if (rules.indexOf('<') >= 0 || rules.indexOf('>') >= 0 || rules.indexOf('&') >= 0) {
            throw new IllegalArgumentException("a stylesheet that would be escaped");
        }
        return open("style").written(rules).close();
    }

    private Markup written(String safe) {
        try {
            xml.writeCharacters(safe);
            return this;
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
    }

    private void line(String element) throws XMLStreamException {
        if (ON_A_LINE_OF_THEIR_OWN.contains(element)) {
            xml.writeCharacters("\n");
        }
    }

    private void attributes(String... attributes) throws XMLStreamException {
        for (int i = 0; i < attributes.length; i += 2) {
            if (!attributes[i + 1].isEmpty()) {
                xml.writeAttribute(attributes[i], PlainText.of(attributes[i + 1]));
            }
        }
    }

    /** {@return all that was written} */
    @Override
    public String toString() {
        try {
            xml.flush();
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
        return text.toString();
    }
}
