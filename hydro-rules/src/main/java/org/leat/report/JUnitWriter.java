package org.leat.report;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import org.apiguardian.api.API;
import org.leat.check.Finding;
import org.leat.check.Kind;
import org.leat.check.Level;
import org.leat.check.Report;
import org.leat.check.Rulebook;
import org.leat.file.Problem;
import org.leat.file.ProblemText;

/**
 * Writes JUnit's XML: a suite for each design, a case for each judgement. A failure at the level that fails the run is a
 * failure; what is less, could not be judged, is for a person or does not count is skipped with its reason, never
 * passed; what broke or cannot be read is an error. What is only told, and what does not apply, is no case.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class JUnitWriter implements ReportWriter {

    private final XMLStreamWriter xml;
    private final Wording wording;
    private final Level failOn;

    /**
     * Begins a document.
     *
     * @param failOn the least level of a failure that is to fail
     */
    public JUnitWriter(Rulebook rulebook, Appendable out, Level failOn) throws IOException {
        this.wording = new Wording(rulebook);
        this.failOn = failOn;
        try {
            this.xml = XMLOutputFactory.newFactory().createXMLStreamWriter(Characters.ofXml(out));
            xml.writeStartDocument("UTF-8", "1.0");
            xml.writeCharacters("\n");
            xml.writeStartElement("testsuites");
            xml.writeAttribute("name", "leat");
        } catch (XMLStreamException e) {
            throw new IOException(e);
        }
        List<JUnitCase> loosened = SettingsText.playedDown(rulebook).stream()
                .map(JUnitCase::loosened)
                .toList();
        if (!loosened.isEmpty()) {
            write("settings", "settings that loosen what protects people", List.of(), loosened);
        }
    }

    @Override
    public void add(Report report) throws IOException {
        List<JUnitCase> cases = new ArrayList<>();
        ImplausibleNumbers.phrases(report, wording).forEach(on -> cases.add(JUnitCase.judgedOn(on)));
        for (Problem problem : report.problems()) {
            cases.add(JUnitCase.error("file/readable", ProblemText.of(problem), ProblemText.line(problem)));
        }
        for (Finding finding : report.findings()) {
            Kind kind = finding.outcome().kind();
            if (kind == Kind.PASS || kind.needsAttention() || finding.broke()) {
                cases.add(JUnitCase.of(finding, wording, failOn));
            }
        }
        String name = report.design().isEmpty() ? report.file() : report.design();
        write(report.file(), name, JUnitValues.of(report), cases);
    }

    @Override
    public void broken(String file, String cause) throws IOException {
        write(file, file, List.of(), List.of(JUnitCase.error("file/readable", "this program broke: " + cause, file)));
    }

    @Override
    public void end() throws IOException {
        try {
            xml.writeCharacters("\n");
            xml.writeEndElement();
            xml.writeCharacters("\n");
            xml.writeEndDocument();
            xml.flush();
        } catch (XMLStreamException e) {
            throw new IOException(e);
        }
    }

    private void write(String file, String name, List<JUnitValues.Value> values, List<JUnitCase> cases)
            throws IOException {
        try {
            line(1);
            xml.writeStartElement("testsuite");
            xml.writeAttribute("name", PlainText.of(name));
            xml.writeAttribute("tests", Integer.toString(cases.size()));
            xml.writeAttribute("failures", count(cases, JUnitCase.Result.FAILURE));
            xml.writeAttribute("errors", count(cases, JUnitCase.Result.ERROR));
            xml.writeAttribute("skipped", count(cases, JUnitCase.Result.SKIPPED));
            line(2);
            xml.writeStartElement("properties");
            property("file", file);
            for (JUnitValues.Value value : values) {
                property(value.name(), value.text());
            }
            line(2);
            xml.writeEndElement();
            for (JUnitCase one : cases) {
                write(one, className(file));
            }
            line(1);
            xml.writeEndElement();
            xml.flush();
        } catch (XMLStreamException e) {
            throw new IOException(e);
        }
    }

    private void property(String name, String value) throws XMLStreamException {
        line(3);
        xml.writeEmptyElement("property");
        xml.writeAttribute("name", PlainText.of(name));
        xml.writeAttribute("value", PlainText.of(value));
    }

    private void write(JUnitCase one, String className) throws XMLStreamException {
        line(2);
        xml.writeStartElement("testcase");
        xml.writeAttribute("classname", className);
        xml.writeAttribute("name", PlainText.of(one.name()));
        if (one.result() != JUnitCase.Result.PASSED) {
            line(3);
            xml.writeStartElement(one.result().element());
            xml.writeAttribute("message", PlainText.of(one.message()));
            if (one.result() != JUnitCase.Result.SKIPPED) {
                xml.writeAttribute("type", one.type());
            }
            text(one.lines());
            xml.writeEndElement();
        } else if (!one.lines().isEmpty()) {
            line(3);
            xml.writeStartElement("system-out");
            text(one.lines());
            xml.writeEndElement();
        }
        line(2);
        xml.writeEndElement();
    }

    private void text(List<String> lines) throws XMLStreamException {
        xml.writeCharacters(String.join("\n", lines.stream().map(PlainText::of).toList()));
    }

    private void line(int indent) throws XMLStreamException {
        xml.writeCharacters("\n" + "  ".repeat(indent));
    }

    /** Viewers group cases by what stands before the last full stop. */
    private static String className(String file) {
        String path = file.replace('\\', '/');
        int dot = path.lastIndexOf('.');
        String name = dot > path.lastIndexOf('/') ? path.substring(0, dot) : path;
        return PlainText.of(name.replace('.', '_').replace('/', '.'));
    }

    private static String count(List<JUnitCase> cases, JUnitCase.Result result) {
        return Long.toString(cases.stream().filter(c -> c.result() == result).count());
    }
}
