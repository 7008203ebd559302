package org.leat.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.leat.check.Level;
import org.leat.check.Report;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** The structure that JUnit's ant task began and that test reports are read by: names, order and counts. */
class JUnitWriterTest {

    /** Which elements may stand in which, as in the schemas that readers of such reports publish. */
    private static final Map<String, Set<String>> CHILDREN = Map.of(
            "testsuites", Set.of("testsuite"),
            "testsuite", Set.of("properties", "testcase"),
            "properties", Set.of("property"),
            "property", Set.of(),
            "testcase", Set.of("skipped", "error", "failure", "system-out"),
            "skipped", Set.of(),
            "error", Set.of(),
            "failure", Set.of(),
            "system-out", Set.of());

    private static final Map<String, Set<String>> ATTRIBUTES = Map.of(
            "testsuites", Set.of("name"),
            "testsuite", Set.of("name", "tests", "failures", "errors", "skipped"),
            "properties", Set.of(),
            "property", Set.of("name", "value"),
            "testcase", Set.of("name", "classname"),
            "skipped", Set.of("message"),
            "error", Set.of("message", "type"),
            "failure", Set.of("message", "type"),
            "system-out", Set.of());

    private static Document write(Level failOn, Report... reports) throws Exception {
        StringBuilder out = new StringBuilder();
        JUnitWriter writer = new JUnitWriter(MadeReports.rulebook(), out, failOn);
        for (Report report : reports) {
            writer.add(report);
        }
        writer.broken("broken.yaml", "Boom: <no>");
        writer.end();
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(out.toString().getBytes(StandardCharsets.UTF_8)));
    }

    private static List<Element> elements(Node parent) {
        List<Element> elements = new ArrayList<>();
        for (Node n = parent.getFirstChild(); n != null; n = n.getNextSibling()) {
            if (n instanceof Element e) {
                elements.add(e);
            }
        }
        return elements;
    }

    private static void structure(Element element) {
        String name = element.getTagName();
        for (int i = 0; i < element.getAttributes().getLength(); i++) {
            assertThat(ATTRIBUTES.get(name))
                    .contains(element.getAttributes().item(i).getNodeName());
        }
        assertThat(element.getAttributes().getLength())
                .isEqualTo(ATTRIBUTES.get(name).size());
        for (Element child : elements(element)) {
            assertThat(CHILDREN.get(name)).contains(child.getTagName());
            structure(child);
        }
    }

    @Test
    void the_structure_is_the_known_one_and_the_counts_agree() throws Exception {
        Document document = write(Level.ERROR, MadeReports.report(), MadeReports.unreadable(), MadeReports.hostile());
        structure(document.getDocumentElement());
        List<Element> suites = elements(document.getDocumentElement());
        assertThat(suites).hasSize(4);
        for (Element suite : suites) {
            assertThat(suite.getElementsByTagName("testcase").getLength())
                    .isEqualTo(Integer.parseInt(suite.getAttribute("tests")))
                    .isPositive();
            for (String what : List.of("failure", "error", "skipped")) {
                assertThat(suite.getElementsByTagName(what).getLength())
                        .isEqualTo(Integer.parseInt(suite.getAttribute(what.equals("skipped") ? what : what + "s")));
            }
            assertThat(elements(suite).get(0).getTagName()).isEqualTo("properties");
        }
        assertThat(suites.get(3)
                        .getElementsByTagName("error")
                        .item(0)
                        .getAttributes()
                        .getNamedItem("message"))
                .extracting(Node::getNodeValue)
                .isEqualTo("this program broke: Boom: <no>");
    }

    @Test
    void only_what_fails_the_run_fails_and_nothing_unjudged_passes() throws Exception {
        Element suite = elements(write(Level.ERROR, MadeReports.report()).getDocumentElement())
                .get(0);
        assertThat(suite.getAttribute("failures")).isEqualTo("1");
        assertThat(suite.getAttribute("skipped")).isEqualTo("2"); // a note and an open question
        assertThat(suite.getAttribute("tests")).isEqualTo("4");
        assertThat(suite.getTextContent())
                .contains("value 1.2 m", "limit at most 0.9 m", "source common practice", "way out: ");
        assertThat(elements(write(Level.NOTE, MadeReports.report()).getDocumentElement())
                        .get(0)
                        .getAttribute("failures"))
                .isEqualTo("2");
    }

    @Test
    void what_somebody_suppresses_or_the_baseline_knows_is_skipped_with_the_reason() throws Exception {
        Element suite = elements(write(Level.ERROR, MadeStandings.report()).getDocumentElement())
                .get(0);
        assertThat(suite.getAttribute("failures")).isEqualTo("0");
        List<String> messages = new ArrayList<>();
        for (Element one : elements(suite)) {
            elements(one).stream()
                    .filter(e -> e.getTagName().equals("skipped"))
                    .forEach(e -> messages.add(e.getAttribute("message")));
        }
        assertThat(messages)
                .anyMatch(m -> m.startsWith("error: ")
                        && m.contains("does not count: suppressed by R. Ode")
                        && m.contains("wears a lid"))
                .anyMatch(m -> m.contains("known from the baseline"));
    }

    @Test
    void no_control_character_reaches_the_file() throws IOException {
        StringBuilder out = new StringBuilder();
        JUnitWriter writer = new JUnitWriter(MadeReports.rulebook(), out, Level.ERROR);
        writer.add(MadeReports.hostile());
        writer.end();
        assertThat(out.toString().replace("\n", "")).doesNotContainPattern("[\\p{Cntrl}\\u202e]");
    }
}
