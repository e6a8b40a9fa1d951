package crowdline.console.keys;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class CommandTableTest {
    private final List<Command> done = new ArrayList<>();

    @Test
    void aTableWithoutOneOfItsCommandsCannotBeMade() {
        CommandTable.Filling table = CommandTable.of(Command.Scope.DEBRIEF)
                .on(Command.LATER_RUN, () -> {})
                .on(Command.EARLIER_RUN, () -> {})
                .on(Command.DAY_CHARTS, () -> {})
                .on(Command.OTHER_DAY, () -> {})
                .on(Command.SAVE_TEXT, () -> {})
                .on(Command.SCORE_NEXT, () -> {})
                .on(Command.SCORE_AGAIN, () -> {})
                .on(Command.SCORE_AWAY, () -> {});
        assertThatThrownBy(table::filled)
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("nobody carries out [SAVE_TABLE, SAVE_DAY, SAVE_JSON]");
    }

    @Test
    void aCommandOfAnotherScopeOrSaidTwiceIsRefused() {
        CommandTable.Filling table = CommandTable.of(Command.Scope.DEBRIEF).on(Command.SAVE_TABLE, () -> {});
        assertThatThrownBy(() -> table.on(Command.NEXT, () -> {})).hasMessageContaining("NEXT is a command of LIVE");
        assertThatThrownBy(() -> table.on(Command.SAVE_TABLE, () -> {})).hasMessageContaining("said once");
    }

    @Test
    void eachCommandDoesWhatTheTableSaysAndTheRestGoesToWhoeverKnows() {
        CommandTable table = CommandTable.of(Command.Scope.DEBRIEF)
                .on(Command.SAVE_TABLE, () -> done.add(Command.QUIT))
                .rest(() -> true, done::add)
                .filled();
        table.carryOut(Command.SAVE_TEXT);
        table.carryOut(Command.SAVE_TABLE);
        assertThat(done).containsExactly(Command.SAVE_TEXT, Command.QUIT);
        assertThatThrownBy(() -> table.carryOut(Command.NEXT)).hasMessageContaining("belongs to LIVE");
    }

    @Test
    void whatCanBeGivenIsAskedAnewEachTime() {
        AtomicBoolean open = new AtomicBoolean();
        CommandTable table = CommandTable.of(Command.Scope.GLOSSARY)
                .on(Command.DRILL, () -> {})
                .rest(open::get, done::add)
                .filled();
        assertThat(table.possible()).containsExactly(Command.DRILL);
        open.set(true);
        assertThat(table.possible())
                .containsExactlyInAnyOrderElementsOf(Stream.of(Command.values())
                        .filter(command -> command.scope() == Command.Scope.GLOSSARY)
                        .toList());
    }
}
