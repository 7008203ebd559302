package org.leat.report;

import com.fasterxml.jackson.databind.JsonNode;
import java.net.URI;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What SARIF 2.1.0 (OASIS Standard incorporating Errata 01) demands beyond its schema, of the parts that are written
 * here. Section numbers are from memory of that text.
 */
final class SarifStandard {

    private static final Pattern PLACEHOLDER = Pattern.compile("\\{(\\d+)}");
    private static final Set<String> KINDS = Set.of("pass", "open", "informational", "notApplicable", "review", "fail");

    private final JsonNode run;
    private final List<String> complaints = new ArrayList<>();

    private SarifStandard(JsonNode run) {
        this.run = run;
    }

    /** {@return what a log does against the standard, each with its section} */
    static List<String> complaints(JsonNode log) {
        SarifStandard standard = new SarifStandard(log.at("/runs/0"));
        standard.log(log);
        standard.rules();
        standard.places(standard.run);
        standard.invocation();
        Set<String> identities = new HashSet<>();
        for (JsonNode result : standard.run.get("results")) {
            standard.result(result);
            standard.fixes(result);
            if (!identities.add(result.get("fingerprints") + " "
                            + result.at("/locations/0/physicalLocation/artifactLocation/uri")
                            + result.at("/baselineState"))
                    && !result.get("ruleId").asText().equals("file/readable")) {
                standard.complain("3.27.16", "two results of one fingerprint: " + result.get("fingerprints"));
            }
        }
        standard.onEveryResultOrOnNone("suppressions", "3.27.23");
        standard.onEveryResultOrOnNone("baselineState", "3.27.24");
        return standard.complaints;
    }

    private void complain(String section, String what) {
        complaints.add("§" + section + ": " + what);
    }

    private void demand(boolean held, String section, String what) {
        if (!held) {
            complain(section, what);
        }
    }

    private void log(JsonNode log) {
        demand(log.fieldNames().next().equals("$schema"), "3.13.3", "$schema comes first, for readers that stream");
        demand(log.get("version").asText().equals("2.1.0"), "3.13.2", "version");
        boolean text = false;
        for (JsonNode region : run.findValues("region")) {
            text |= region.has("startLine");
        }
        demand(!text || run.has("columnKind"), "3.14.27", "columnKind is there where regions are");
        for (JsonNode result : run.get("results")) {
            demand(result.has("ruleId") || result.has("rule"), "3.27.5", "a result names its rule");
        }
        for (JsonNode address : run.findValues("helpUri")) {
            demand(address.asText().startsWith("https://"), "3.49.12", "a helpUri that leads nowhere");
        }
    }

    private void rules() {
        Set<String> ids = new LinkedHashSet<>();
        for (JsonNode rule : run.at("/tool/driver/rules")) {
            String id = rule.get("id").asText();
            demand(ids.add(id), "3.19.23", "two rules are called " + id);
            for (String text : List.of("shortDescription", "fullDescription", "help")) {
                demand(!rule.at("/" + text + "/text").asText().isBlank(), "3.12.3", id + " without " + text);
            }
            demand(
                    Set.of("error", "warning", "note", "none")
                            .contains(rule.at("/defaultConfiguration/level").asText()),
                    "3.50.3",
                    id + " has a level");
            rule.path("messageStrings").properties().forEach(message -> {
                Set<Integer> numbers =
                        placeholders(message.getValue().get("text").asText());
                demand(
                        numbers.isEmpty() || numbers.size() == new ArrayList<>(numbers).get(numbers.size() - 1) + 1,
                        "3.11.5",
                        id + "." + message.getKey() + " leaves a number out");
            });
        }
    }

    private static Set<Integer> placeholders(String text) {
        Set<Integer> numbers = new TreeSet<>();
        Matcher m = PLACEHOLDER.matcher(text);
        while (m.find()) {
            numbers.add(Integer.parseInt(m.group(1)));
        }
        return numbers;
    }

    private void result(JsonNode result) {
        String id = result.get("ruleId").asText();
        JsonNode rule = run.at("/tool/driver/rules/" + result.path("ruleIndex").asInt(-1));
        demand(rule.path("id").asText().equals(id), "3.27.6", "ruleIndex is not that of " + id);
        String kind = result.path("kind").asText("fail");
        demand(KINDS.contains(kind), "3.27.9", "no such kind: " + kind);
        demand(
                kind.equals("fail") != result.path("level").asText("warning").equals("none"),
                "3.27.10",
                id + " is " + kind + " at level " + result.path("level"));
        message(result.get("message"), rule);
        demand(result.path("locations").size() == 1, "3.27.12", id + " stands at one place");
        demand(
                result.path("fingerprints").size() > 0
                        && result.path("fingerprints").properties().stream()
                                .noneMatch(f -> f.getValue().asText().isBlank()),
                "3.27.16",
                id + " has an empty fingerprint");
        Set<Integer> ids = new HashSet<>();
        for (JsonNode related : result.path("relatedLocations")) {
            demand(ids.add(related.path("id").asInt(-1)), "3.28.2", id + " numbers its places twice");
            demand(!related.at("/message/text").asText().isBlank(), "3.27.22", id + " says why a place is related");
        }
    }

    private void message(JsonNode message, JsonNode rule) {
        demand(!message.path("text").asText().isBlank(), "3.11.8", "a message that does not stand alone");
        if (!message.has("id")) {
            return;
        }
        JsonNode template = rule.path("messageStrings").path(message.get("id").asText());
        demand(template.has("text"), "3.11.7", rule.path("id") + " has no message " + message.get("id"));
        demand(
                placeholders(template.path("text").asText()).size()
                        == message.path("arguments").size(),
                "3.11.11",
                rule.path("id") + "." + message.get("id") + " has other arguments than placeholders");
    }

    private void places(JsonNode node) {
        if (node.has("artifactLocation")) {
            JsonNode at = node.get("artifactLocation");
            String uri = at.path("uri").asText();
            JsonNode artifact = run.at("/artifacts/" + at.path("index").asInt(-1));
            demand(artifact.at("/location/uri").asText().equals(uri), "3.4.5", "index is not that of " + uri);
            demand(artifact.path("roles").size() > 0, "3.24.6", uri + " plays no role");
            uri(uri);
        }
        for (String region : List.of("region", "deletedRegion")) {
            if (node.has(region)) {
                region(node.get(region));
            }
        }
        for (JsonNode logical : node.path("logicalLocations")) {
            demand(!logical.path("name").asText().isEmpty(), "3.33.4", "a logical location without name");
            demand(
                    logical.path("fullyQualifiedName")
                            .asText()
                            .endsWith(logical.path("name").asText()),
                    "3.33.5",
                    "the full name ends in the name: " + logical);
        }
        node.forEach(this::places);
    }

    private void uri(String uri) {
        try {
            URI parsed = new URI(uri);
            demand(!parsed.isAbsolute() && !uri.startsWith("/"), "3.4.4", "an absolute URI: " + uri);
            demand(parsed.normalize().toString().equals(uri), "3.10.1", "a URI that is not normal: " + uri);
            demand(uri.chars().allMatch(c -> c < 128), "3.10.1", "a URI not encoded: " + uri);
        } catch (java.net.URISyntaxException e) {
            complain("3.10.1", "no URI: " + uri);
        }
    }

    private void region(JsonNode region) {
        int line = region.path("startLine").asInt();
        int column = region.path("startColumn").asInt(1);
        int endLine = region.path("endLine").asInt(line);
        int endColumn = region.path("endColumn").asInt(Integer.MAX_VALUE);
        demand(line >= 1 && column >= 1, "3.30.5", "lines and columns count from one: " + region);
        demand(
                endLine > line || (endLine == line && endColumn >= column),
                "3.30.7",
                "ends before it begins: " + region);
    }

    private void fixes(JsonNode result) {
        for (JsonNode fix : result.path("fixes")) {
            demand(!fix.at("/description/text").asText().isBlank(), "3.55.2", "a fix says what it does");
            Set<String> changed = new HashSet<>();
            demand(fix.path("artifactChanges").size() > 0, "3.55.3", "a fix that changes nothing");
            for (JsonNode change : fix.path("artifactChanges")) {
                demand(changed.add(change.at("/artifactLocation/uri").asText()), "3.55.3", "one file changed twice");
                demand(change.path("replacements").size() > 0, "3.56.3", "a change without replacement");
                JsonNode before = null;
                for (JsonNode replacement : change.path("replacements")) {
                    JsonNode region = replacement.get("deletedRegion");
                    demand(before == null || !overlap(before, region), "3.57.3", "replacements overlap");
                    before = region;
                }
            }
        }
    }

    private static boolean overlap(JsonNode a, JsonNode b) {
        long endOfA = a.get("endLine").asLong() * 1_000_000 + a.get("endColumn").asLong();
        long startOfA =
                a.get("startLine").asLong() * 1_000_000 + a.get("startColumn").asLong();
        long endOfB = b.get("endLine").asLong() * 1_000_000 + b.get("endColumn").asLong();
        long startOfB =
                b.get("startLine").asLong() * 1_000_000 + b.get("startColumn").asLong();
        return startOfA < endOfB && startOfB < endOfA;
    }

    private void invocation() {
        for (JsonNode invocation : run.path("invocations")) {
            demand(invocation.has("executionSuccessful"), "3.20.14", "whether it was successful");
            for (JsonNode override : invocation.path("ruleConfigurationOverrides")) {
                reference(override.get("descriptor"), "/tool/driver/rules/");
            }
            for (JsonNode notice : invocation.path("toolExecutionNotifications")) {
                reference(notice.get("descriptor"), "/tool/driver/notifications/");
                if (notice.has("associatedRule")) {
                    reference(notice.get("associatedRule"), "/tool/driver/rules/");
                }
                demand(
                        !notice.get("level").asText().equals("error")
                                || !invocation.get("executionSuccessful").asBoolean(),
                        "3.20.14",
                        "an error on the way, yet successful");
            }
            boolean redacted = invocation.path("arguments").toString().contains("[REDACTED]");
            demand(!redacted || run.path("redactionTokens").size() > 0, "3.14.28", "redacted without saying so");
        }
    }

    private void reference(JsonNode descriptor, String where) {
        demand(
                run.at(where + descriptor.path("index").asInt(-1))
                        .path("id")
                        .asText()
                        .equals(descriptor.path("id").asText()),
                "3.52.5",
                "index is not that of " + descriptor.path("id"));
    }

    private void onEveryResultOrOnNone(String property, String section) {
        int with = 0;
        for (JsonNode result : run.get("results")) {
            with += result.has(property) ? 1 : 0;
        }
        demand(
                with == 0 || with == run.get("results").size(),
                section,
                property + " on some results and not on others");
    }
}
