package crowdline.app.command;

import crowdline.app.shell.ExitCode;
import crowdline.app.shell.Terminal;
import crowdline.practice.CannotPractise;
import crowdline.practice.Change;
import crowdline.practice.Level;
import crowdline.practice.Piece;
import crowdline.practice.PracticeFlight;
import crowdline.practice.PracticePilot;
import crowdline.sheet.RunningSheet;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.show.CatalogueFile;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Prints a flight that does not keep to the plan, for whoever tests somebody who learns. */
@Command(
        name = "practice",
        mixinStandardHelpOptions = true,
        description = {
            "Prints a flight of an act that does not keep to its plan: what is flown when, and what is changed.",
            "For whoever sits beside a learner: read it out, or move Live on by it with the keys, and see what they make of it."
        },
        footer = {
            "Ends with 0 if all went well, 1 if the act cannot be flown, 2 if a file or an option cannot be used.",
            RunningSheet.CAUTION
        })
public final class PracticeCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Parameters(paramLabel = "SHOW", description = "The show file.")
    private @Nullable Path file;

    @Mixin
    private final ActChoice choice = new ActChoice();

    @Option(names = "--level", paramLabel = "1-4", defaultValue = "2", description = "How little it keeps to the plan.")
    private int level;

    @Option(
            names = "--seed",
            paramLabel = "S",
            defaultValue = "1",
            description = "The same seed gives the same flight.")
    private long seed;

    public PracticeCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws ShowFileException {
        Show show = new UsableShow(terminal).read(Objects.requireNonNull(file));
        List<Act> acts = choice.of(show);
        Level chosen;
        try {
            chosen = Level.of(level);
        } catch (IllegalArgumentException e) {
            terminal.complain(String.valueOf(e.getMessage()));
            return ExitCode.UNUSABLE;
        }
        Act act = acts.get(0);
        try {
            print(
                    act,
                    new PracticePilot(show, CatalogueFile.shipped().with(show.figures()))
                            .fly(act, choice.variant(act), chosen, seed));
            return ExitCode.FINE;
        } catch (CannotPractise e) {
            terminal.complain(e.why());
            return ExitCode.BLOCKED;
        }
    }

    private void print(Act act, PracticeFlight flight) {
        terminal.line(act.title() + ", variant \"" + flight.variant() + "\", level "
                + flight.level().number() + ", seed " + flight.seed() + ": "
                + flight.level().words().toLowerCase(Locale.ROOT) + ".");
        terminal.line(
                "Times are from the moment the practice begins; the slot begins at " + clock(flight.slotS()) + ".");
        terminal.line("");
        for (Piece piece : flight.pieces()) {
            terminal.line(
                    clock(piece.fromS()) + "  " + indent(piece) + (piece.name().isEmpty() ? "away" : piece.name())
                            + (piece.kind() == Piece.Kind.UNPLANNED ? " (not in the plan)" : ""));
        }
        terminal.line(clock(flight.endS()) + "  over");
        terminal.line("");
        if (flight.changes().isEmpty()) {
            terminal.line("Nothing is changed.");
        }
        for (Change change : flight.changes()) {
            String told = told(change);
            terminal.line("Can be seen at " + clock(change.seenS()) + ": " + told);
        }
    }

    private static String indent(Piece piece) {
        return piece.kind() == Piece.Kind.WAY ? "  " : "";
    }

    private static String told(Change change) {
        return switch (change.kind()) {
            case LATE -> "it begins late";
            case EARLY -> "it begins early";
            case GUSTY -> "the air is gusty";
            case DROPPED -> "left out: " + change.name();
            case SWAPPED -> "changed places: " + change.name();
            case UNPLANNED -> "not in the plan: " + change.name();
            case HOLD -> "it circles and waits";
            case BREAK_OFF -> "it breaks off and leaves";
            case INCIDENT -> "it goes down out of sight: the incident page is wanted";
        };
    }

    private static String clock(double seconds) {
        long whole = Math.round(seconds);
        return String.format(Locale.ROOT, "%2d:%02d", whole / 60, whole % 60);
    }
}
