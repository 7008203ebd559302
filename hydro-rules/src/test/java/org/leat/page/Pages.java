package org.leat.page;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.leat.check.Checker;
import org.leat.check.Examined;
import org.leat.check.Report;
import org.leat.choice.Overview;
import org.leat.file.DesignReader;
import org.leat.file.Reading;
import org.leat.file.RecordReader;
import org.leat.pack.BuiltInPack;
import org.leat.plant.Plant;
import org.leat.readings.Expectations;
import org.leat.readings.FaultTable;
import org.leat.readings.FirstStart;
import org.leat.readings.LogStudy;
import org.leat.readings.PlantLog;
import org.leat.report.StopLimits;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** Pages of the demos and of made designs. */
final class Pages {

    static final Checker CHECKER = Checker.of(List.of(new BuiltInPack()));

    private static final Path DESIGNS = Path.of("..", "hydro-examples", "designs");

    private Pages() {}

    /** A page, and the report it shows. */
    record Made(String text, Report report) {

        /** The page is XML too, so that its parts can be asked for. */
        Document read() throws IOException {
            try {
                String body = text.substring(text.indexOf('\n') + 1);
                return DocumentBuilderFactory.newInstance()
                        .newDocumentBuilder()
                        .parse(new InputSource(new StringReader(body)));
            } catch (ParserConfigurationException | SAXException e) {
                throw new IOException(e);
            }
        }
    }

    static Stream<String> demos() {
        return Stream.of("ash-gill", "first-try", "orchard-sluice", "rowan-ghyll", "tannery-yard");
    }

    static String demoText(String name) throws IOException {
        return Files.readString(DESIGNS.resolve(name + ".yaml"));
    }

    static Made demo(String name) throws IOException {
        return of(demoText(name));
    }

    static Made of(String design) throws IOException {
        Reading reading = DesignReader.read(design, "plant.yaml");
        Examined examined = CHECKER.examined(reading);
        Report report = examined.report();
        StringBuilder out = new StringBuilder();
        PageWriter writer = new PageWriter(CHECKER.rulebook(), out);
        writer.add(report, reading, Overview.of(examined, CHECKER.rulebook()));
        writer.end();
        return new Made(out.toString(), report);
    }

    /** The sheet of a first start. */
    static Made sheet(String name) throws IOException {
        return sheetOf(demoText(name));
    }

    static Made sheetOf(String design) throws IOException {
        Reading reading = DesignReader.read(design, "plant.yaml");
        Report report = CHECKER.check(reading);
        Plant plant = Plant.of(Objects.requireNonNull(reading.design()));
        StringBuilder out = new StringBuilder();
        new StartPage(CHECKER.rulebook())
                .write(
                        report,
                        FirstStart.of(Expectations.of(plant), StopLimits.of(report, plant, CHECKER.rulebook())),
                        out);
        return new Made(out.toString(), report);
    }

    /** A sound plant whose every name is an attack. */
    static Made hostile() throws IOException {
        return of(demoText("rowan-ghyll")
                .replace(
                        "name: Rowan Ghyll hut",
                        "name: \"<script>window.hit=1</script>' onload='hit()' \\u05d0\\u05d1\"")
                .replace("name: inlet", "name: \"</title><img src=x onerror=hit()>\"")
                .replace("name: battery fuse", "name: \"\\\" onclick=\\\"hit()\""));
    }

    /** The page of a log of the hut that stands in the examples. */
    static Made log() throws IOException {
        Plant plant = Plant.of(Objects.requireNonNull(
                DesignReader.read(demoText("rowan-ghyll"), "plant.yaml").design()));
        PlantLog log = Objects.requireNonNull(RecordReader.readTable(
                        PlantLog.class,
                        "entries",
                        DESIGNS.resolveSibling("readings").resolve("rowan-ghyll-log.csv"),
                        "log.csv")
                .record());
        LogStudy.Told told =
                LogStudy.of(FaultTable.of(Expectations.of(plant)), log).orElseThrow();
        Report report = CHECKER.check(DesignReader.read(demoText("rowan-ghyll"), "plant.yaml"));
        return new Made(new LogPage(CHECKER.rulebook()).written(told, "<b>Hut", "log.csv"), report);
    }

    static Stream<Element> all(Document page, String element) {
        NodeList found = page.getElementsByTagName(element);
        return Stream.iterate(0, i -> i + 1).limit(found.getLength()).map(i -> (Element) found.item(i));
    }
}
