package crowdline.console.pedals;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import crowdline.console.keys.Command;
import java.util.List;
import org.junit.jupiter.api.Test;

class PedalCommandsTest {
    @Test
    void namesInSettingsStayAsTheyAre() {
        assertThat(List.of("next", "back", "said", "not-said", "hold", "off-plan", "filler").stream()
                        .map(name -> PedalCommands.of(name).orElseThrow()))
                .containsExactly(
                        Command.NEXT,
                        Command.BACK,
                        Command.SAID,
                        Command.NOT_SAID,
                        Command.HOLD,
                        Command.OFF_PLAN,
                        Command.FILLER)
                .containsExactlyElementsOf(PedalCommands.ALL)
                .allSatisfy(command -> assertThat(PedalCommands.of(PedalCommands.name(command)))
                        .contains(command));
    }

    @Test
    void whatAPedalMayNotGiveHasNoName() {
        assertThat(PedalCommands.of("end-act")).isEmpty();
        assertThatThrownBy(() -> PedalCommands.name(Command.END_ACT))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("no pedal may give END_ACT");
    }
}
