import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.jar.Attributes;
import java.util.jar.Manifest;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Looks at a repository into which a release was deployed: what a central repository asks of every artifact, licence and
 * notice in every jar, a module description in every library. {@code java LookAtRelease.java REPOSITORY VERSION ROOT}
 */
public class LookAtRelease {

    private static final List<String> ASKED = List.of(
            "name",
            "description",
            "url",
            "licenses/license/name",
            "licenses/license/url",
            "scm/url",
            "scm/connection",
            "developers/developer/name",
            "developers/developer/roles/role");

    private static final List<String> missing = new ArrayList<>();

    public static void main(String[] args) throws Exception {
        Path organisation = Path.of(args[0], "org", "leat");
        String version = args[1];
        Path root = Path.of(args[2]);
        TreeMap<String, Path> artifacts = new TreeMap<>();
        try (var folders = Files.list(organisation)) {
            folders.forEach(f -> artifacts.put(f.getFileName().toString(), f.resolve(version)));
        }
        String together = Files.readString(artifacts.get("hydro-bom").resolve("hydro-bom-" + version + ".pom"));
        for (var artifact : artifacts.entrySet()) {
            String name = artifact.getKey();
            Path start = artifact.getValue().resolve(name + "-" + version);
            Element pom = xml(Path.of(start + ".pom"));
            for (String path : ASKED) {
                String text = inherited(pom, path, organisation, version);
                need(
                        text != null && !text.isBlank() && !text.contains("${") && !text.contains(".example"),
                        name + ": no " + path + " (" + text + ")");
            }
            boolean jar = !"pom".equals(child(pom, "packaging"));
            need(
                    !jar
                            || "maven-plugin".equals(child(pom, "packaging"))
                            || together.contains("<artifactId>" + name + "</artifactId>"),
                    name + ": not in hydro-bom");
            need(Files.exists(Path.of(start + ".pom.asc")), name + ": pom not signed");
            if (jar) {
                List<String> files = new ArrayList<>(
                        List.of(".jar", "-sources.jar", "-javadoc.jar", "-cyclonedx.json", "-cyclonedx.xml"));
                for (String file : files) {
                    need(Files.exists(Path.of(start + file)), name + ": no " + file);
                    need(Files.exists(Path.of(start + file + ".asc")), name + ": " + file + " not signed");
                }
            }
            try (var all = Files.list(artifact.getValue())) {
                for (Path file :
                        all.filter(f -> f.toString().endsWith(".jar")).sorted().toList()) {
                    lookInto(file, root, file.toString().equals(start + ".jar"));
                }
            }
            System.out.println(name + ": looked at");
        }
        missing.forEach(System.err::println);
        if (!missing.isEmpty()) {
            System.exit(1);
        }
    }

    private static void lookInto(Path jar, Path root, boolean library) throws IOException {
        try (ZipFile zip = new ZipFile(jar.toFile())) {
            for (String text : List.of("LICENSE", "NOTICE")) {
                ZipEntry entry = zip.getEntry("META-INF/" + text);
                need(entry != null, jar.getFileName() + ": no META-INF/" + text);
                if (entry != null) {
                    try (InputStream in = zip.getInputStream(entry)) {
                        // what libraries taken into a jar say of themselves may stand beside ours
                        String there = new String(in.readAllBytes(), StandardCharsets.UTF_8);
                        need(
                                Files.readString(root.resolve(text)).lines().allMatch(there::contains),
                                jar.getFileName() + ": another " + text);
                    }
                }
            }
            need(
                    !library
                            || zip.getEntry("module-info.class") != null
                            || zip.getEntry("META-INF/maven/plugin.xml") != null
                            || manifest(zip).getValue("Automatic-Module-Name") != null,
                    jar.getFileName() + ": no module description");
            need(zip.size() > 3, jar.getFileName() + ": empty");
        }
    }

    private static Attributes manifest(ZipFile zip) throws IOException {
        try (InputStream in = zip.getInputStream(zip.getEntry("META-INF/MANIFEST.MF"))) {
            return new Manifest(in).getMainAttributes();
        }
    }

    private static void need(boolean there, String else_) {
        if (!there) {
            missing.add(else_);
        }
    }

    /** An element of a pom, else of its parent, with its own properties put in. */
    private static String inherited(Element pom, String path, Path organisation, String version) throws Exception {
        Node at = pom;
        for (String step : path.split("/")) {
            at = at == null ? null : element(at, step);
        }
        String text = at == null ? null : at.getTextContent().strip();
        Node parent = element(pom, "parent");
        if (text == null && parent != null && !path.equals("name") && !path.equals("description")) {
            String name = child(parent, "artifactId");
            return inherited(
                    xml(organisation.resolve(name).resolve(version).resolve(name + "-" + version + ".pom")),
                    path,
                    organisation,
                    version);
        }
        Node properties = element(pom, "properties");
        String home = properties == null ? null : child(properties, "leat.home");
        return text == null || home == null ? text : text.replace("${leat.home}", home);
    }

    private static Node element(Node in, String name) {
        for (Node n = in.getFirstChild(); n != null; n = n.getNextSibling()) {
            if (name.equals(n.getNodeName())) {
                return n;
            }
        }
        return null;
    }

    private static String child(Node in, String name) {
        Node found = element(in, name);
        return found == null ? null : found.getTextContent().strip();
    }

    private static Element xml(Path file) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(file.toFile())
                .getDocumentElement();
    }
}
