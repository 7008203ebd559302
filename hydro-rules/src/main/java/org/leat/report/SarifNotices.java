package org.leat.report;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leat.check.Finding;
import org.leat.check.Report;
import org.leat.check.Suppression.IdleSuppression;

/** What broke on the way, as SARIF's notifications: the run was not successful then. */
final class SarifNotices {

    /** The notifications there are, in the order of their index. */
    static final List<SarifModel.NotificationDescriptor> KINDS = List.of(
            new SarifModel.NotificationDescriptor(
                    "program-broke", new SarifModel.Text("The program broke over a file; it was not checked.")),
            new SarifModel.NotificationDescriptor(
                    "rule-broke", new SarifModel.Text("A rule broke; something was not judged.")),
            new SarifModel.NotificationDescriptor(
                    "suppression-idle", new SarifModel.Text("A suppression suppresses nothing, or no longer holds.")),
            new SarifModel.NotificationDescriptor(
                    "cannot-be-meant",
                    new SarifModel.Text("A number of the design cannot be meant; all results of it are judged on it.")),
            new SarifModel.NotificationDescriptor(
                    "settings-loosen",
                    new SarifModel.Text(
                            "Settings switch off, play down or loosen what protects people; someone answers for it.")));

    private static final int MOST = 100;

    private final Wording wording;
    private final SarifArtifacts artifacts;
    private final SarifRules rules;
    private final List<SarifModel.Notification> told = new ArrayList<>();
    private boolean broke;

    SarifNotices(Wording wording, SarifArtifacts artifacts, SarifRules rules) {
        this.wording = wording;
        this.artifacts = artifacts;
        this.rules = rules;
    }

    void add(Report report) {
        broke |= report.broke();
        for (Finding finding : report.findings()) {
            if (finding.broke()) {
                String rule = finding.outcome().rule();
                tell(
                        1,
                        new SarifModel.DescriptorReference(rule, rules.index(rule)),
                        "the rule " + rule + " broke over " + SarifUri.of(report.file()),
                        report.file());
            }
        }
        for (String on : ImplausibleNumbers.phrases(report, wording)) {
            tell(
                    3,
                    "warning",
                    null,
                    "all of " + SarifUri.of(report.file()) + " is judged on " + on + ", which cannot be meant",
                    report.file());
        }
        for (IdleSuppression idle : report.idle()) {
            String text = SuppressionText.of(idle, report.day());
            tell(2, "warning", null, text, idle.suppression().position().file());
        }
    }

    void broken(String file, String cause) {
        broke = true;
        tell(0, null, "this program broke over " + SarifUri.of(file) + ": " + cause, file);
    }

    boolean broke() {
        return broke;
    }

    /** {@return a notification for each thing that settings loosen of what protects people; null for none} */
    static @Nullable List<SarifModel.Notification> loosened(List<String> lines) {
        int kind = KINDS.size() - 1;
        List<SarifModel.Notification> all = lines.stream()
                .map(line -> new SarifModel.Notification(
                        new SarifModel.DescriptorReference(KINDS.get(kind).id(), kind),
                        null,
                        "warning",
                        new SarifModel.Text(line),
                        List.of()))
                .toList();
        return all.isEmpty() ? null : all;
    }

    @Nullable
    List<SarifModel.Notification> told() {
        return told.isEmpty() ? null : told;
    }

    private void tell(int kind, SarifModel.@Nullable DescriptorReference rule, String text, String file) {
        tell(kind, "error", rule, text, file);
    }

    private void tell(int kind, String level, SarifModel.@Nullable DescriptorReference rule, String text, String file) {
        SarifModel.ArtifactLocation artifact = artifacts.of(file);
        if (told.size() < MOST) {
            told.add(new SarifModel.Notification(
                    new SarifModel.DescriptorReference(KINDS.get(kind).id(), kind),
                    rule,
                    level,
                    new SarifModel.Text(text),
                    List.of(new SarifModel.ArtifactPlace(new SarifModel.ArtifactPhysical(artifact)))));
        }
    }
}
