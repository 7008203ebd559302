package org.leat.report;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The parts of a SARIF 2.1.0 log that are written here, named as in the standard. */
final class SarifModel {

    private SarifModel() {}

    record Text(String text) {}

    /** What services show to people: marks of direction and the like as their code. */
    record Message(
            String text, @Nullable String id, @Nullable List<String> arguments) {

        Message {
            text = PlainText.of(text);
            arguments = arguments == null
                    ? null
                    : arguments.stream().map(PlainText::of).toList();
        }
    }

    record Help(String text, String markdown) {}

    record Configuration(
            boolean enabled, String level, @Nullable Map<String, Object> parameters) {}

    record Descriptor(
            String id,
            Text shortDescription,
            Text fullDescription,
            Help help,
            @Nullable String helpUri,
            @Nullable Map<String, Text> messageStrings,
            Configuration defaultConfiguration,
            Map<String, Object> properties) {}

    record Driver(
            String name, String semanticVersion, List<Descriptor> rules, List<NotificationDescriptor> notifications) {}

    record NotificationDescriptor(String id, Text shortDescription) {}

    record Tool(Driver driver) {}

    record ArtifactLocation(String uri, int index) {}

    record Region(int startLine, int startColumn, int endLine, int endColumn) {}

    record PhysicalLocation(ArtifactLocation artifactLocation, Region region) {}

    record LogicalLocation(String name, String fullyQualifiedName, String kind) {}

    record Location(
            @Nullable Integer id,
            PhysicalLocation physicalLocation,
            @Nullable List<LogicalLocation> logicalLocations,
            @Nullable Text message) {}

    record Replacement(Region deletedRegion, Text insertedContent) {}

    record ArtifactChange(ArtifactLocation artifactLocation, List<Replacement> replacements) {}

    record Fix(Text description, List<ArtifactChange> artifactChanges) {}

    record Result(
            String ruleId,
            int ruleIndex,
            String kind,
            String level,
            Message message,
            List<Location> locations,
            @Nullable List<Location> relatedLocations,
            Map<String, String> fingerprints,
            @Nullable String baselineState,
            List<Suppression> suppressions,
            @Nullable List<Fix> fixes,
            Map<String, Object> properties) {}

    record Suppression(
            String kind,
            String status,
            String justification,
            Location location,
            @Nullable Map<String, Object> properties) {}

    record Uri(String uri) {}

    record Artifact(Uri location, List<String> roles, String encoding) {}

    record DescriptorReference(String id, int index) {}

    record ConfigurationOverride(
            Configuration configuration, DescriptorReference descriptor, Map<String, Object> properties) {}

    record ArtifactPlace(ArtifactPhysical physicalLocation) {}

    record ArtifactPhysical(ArtifactLocation artifactLocation) {}

    record Notification(
            DescriptorReference descriptor,
            @Nullable DescriptorReference associatedRule,
            String level,
            Text message,
            List<ArtifactPlace> locations) {}

    record Invocation(
            @Nullable List<String> arguments,
            @Nullable Integer exitCode,
            boolean executionSuccessful,
            @Nullable List<ConfigurationOverride> ruleConfigurationOverrides,
            @Nullable List<Notification> toolConfigurationNotifications,
            @Nullable List<Notification> toolExecutionNotifications) {}
}
