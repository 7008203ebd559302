package org.leat.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import picocli.CommandLine.Command;

class LeatTest {

    @Test
    void each_command_is_called_by_its_own_name_and_helps_alone_as_it_does_among_the_others() {
        Map<String, CommandLine> all = Leat.command().getSubcommands();
        assertThat(all).hasSizeGreaterThan(10);
        all.forEach((name, among) -> {
            CommandLine alone = Leat.answering(new String[] {name, "--help"});
            assertThat(alone.getSubcommands()).containsOnlyKeys(name);
            CommandLine command = alone.getSubcommands().get(name);
            assertThat(command.getCommand()
                            .getClass()
                            .getAnnotation(Command.class)
                            .name())
                    .isEqualTo(name);
            assertThat(command.getUsageMessage())
                    .isEqualTo(among.getUsageMessage())
                    .contains("leat " + name);
        });
    }

    @Test
    void options_that_are_made_of_the_readings_fields_are_there() {
        assertThat(Leat.answering(new String[] {"gauge"})
                        .getSubcommands()
                        .get("gauge")
                        .getUsageMessage())
                .contains("--bucket=VOLUME", "--v-notch=ANGLE");
    }

    @Test
    void a_call_that_begins_with_no_command_is_answered_by_all_of_them() {
        int all = Leat.command().getSubcommands().size();
        assertThat(Leat.answering(new String[] {}).getSubcommands()).hasSize(all);
        assertThat(Leat.answering(new String[] {"--help"}).getSubcommands()).hasSize(all);
        assertThat(Leat.answering(new String[] {"chekc"}).getSubcommands()).hasSize(all);
    }
}
