package org.leat.route;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import javax.xml.stream.Location;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.jspecify.annotations.Nullable;

/**
 * Where the points of tracks stand in a file, and the first thing wrong with one: the reader of tracks tells neither line nor column.
 *
 * @param lines of each point, in order
 * @param fault with its place; null where there is none
 */
record TrackPoints(List<Integer> lines, @Nullable String fault) {

    TrackPoints {
        lines = List.copyOf(lines);
    }

    static TrackPoints of(byte[] content, String name) {
        XMLInputFactory factory = XMLInputFactory.newFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        List<Integer> lines = new ArrayList<>();
        try {
            XMLStreamReader xml = factory.createXMLStreamReader(new ByteArrayInputStream(content));
            String fault = null;
            boolean first = true;
            boolean inPoint = false;
            while (xml.hasNext() && fault == null) {
                int event = xml.next();
                if (event == XMLStreamConstants.DTD) {
                    fault = at(name, xml.getLocation()) + "a document type is not read";
                } else if (event == XMLStreamConstants.END_ELEMENT
                        && xml.getLocalName().equals("trkpt")) {
                    inPoint = false;
                } else if (event == XMLStreamConstants.START_ELEMENT) {
                    String element = xml.getLocalName();
                    if (first && !element.equals("gpx")) {
                        fault = at(name, xml.getLocation()) + "found <" + element + ">; expected a track as GPX, <gpx>";
                    } else if (element.equals("trkpt")) {
                        inPoint = true;
                        lines.add(xml.getLocation().getLineNumber());
                        fault = point(xml, name);
                    } else if (inPoint && element.equals("ele")) {
                        fault = height(xml, name);
                    }
                    first = false;
                }
            }
            return new TrackPoints(lines, fault);
        } catch (XMLStreamException e) {
            Location location = e.getLocation();
            return new TrackPoints(
                    lines,
                    (location == null ? name + ": " : at(name, location))
                            + "not readable as XML, of which GPX is made");
        }
    }

    private static String at(String name, Location at) {
        return name + ":" + at.getLineNumber() + ":" + at.getColumnNumber() + ": ";
    }

    private static @Nullable String point(XMLStreamReader xml, String name) {
        String latitude = degrees(xml.getAttributeValue(null, "lat"), 90, "lat");
        String longitude = degrees(xml.getAttributeValue(null, "lon"), 180, "lon");
        String fault = latitude == null ? longitude : latitude;
        return fault == null ? null : at(name, xml.getLocation()) + "track point: " + fault;
    }

    private static @Nullable String degrees(@Nullable String text, double most, String field) {
        if (text == null) {
            return field + " is missing";
        }
        OptionalDouble value = number(text);
        return value.isEmpty() || Math.abs(value.getAsDouble()) > most
                ? "found " + field + " \"" + shortened(text) + "\"; expected degrees from -" + (int) most + " to "
                        + (int) most
                : null;
    }

    private static @Nullable String height(XMLStreamReader xml, String name) throws XMLStreamException {
        Location location = xml.getLocation();
        String place = at(name, location);
        String text = xml.getElementText();
        return number(text).isEmpty()
                ? place + "track point: found ele \"" + shortened(text) + "\"; expected a height in metres"
                : null;
    }

    private static OptionalDouble number(String text) {
        try {
            double value = Double.parseDouble(Objects.requireNonNull(text).strip());
            return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
        } catch (NumberFormatException e) {
            return OptionalDouble.empty();
        }
    }

    private static String shortened(String text) {
        return text.length() > 30 ? text.substring(0, 30) + "…" : text;
    }
}
