package crowdline.app.command;

import crowdline.app.shell.ExitCode;
import crowdline.app.shell.Terminal;
import crowdline.edit.act.CannotBe;
import crowdline.edit.day.OwnGlossary;
import crowdline.edit.day.OwnGlossary.Conflict;
import crowdline.edit.day.OwnGlossary.Merge;
import crowdline.show.Show;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.show.GlossaryJson;
import crowdline.storage.show.GlossaryJson.Words;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Brings the own words of two shows together, and says where they differ. */
final class GlossaryMerging {
    private final Terminal terminal;

    GlossaryMerging(Terminal terminal) {
        this.terminal = terminal;
    }

    /**
     * @param other a show, or words as {@code glossary --json} prints them
     * @param into where the first show is written with the words taken; nowhere if it is null
     * @param theirs whether the other's words count where both explain something
     */
    int merge(@Nullable Path show, @Nullable Path other, @Nullable Path into, boolean theirs) throws ShowFileException {
        if (show == null || other == null) {
            terminal.complain("two shows are needed to merge their words; name them with --show and --merge");
            return ExitCode.UNUSABLE;
        }
        Show mine = new UsableShow(terminal).read(show);
        Optional<Words> told = GlossaryJson.read(other);
        Words others = told.isPresent() ? told.get() : wordsOf(new UsableShow(terminal).read(other));
        Merge merge = OwnGlossary.compare(mine, others.figures(), others.terms());
        merge.figures().forEach(f -> terminal.line("new: " + f.name() + ": " + f.whatItIs()));
        merge.terms().forEach(t -> terminal.line("new: " + t.name() + ": " + t.whatItIs()));
        merge.conflicts().forEach(conflict -> tell(conflict, theirs));
        terminal.line(merge.added() + " new, " + merge.conflicts().size() + " explained otherwise, " + merge.alike()
                + " alike.");
        try {
            Show taken = merge.take(theirs).of(mine).show();
            if (into != null) {
                new WrittenShow(terminal).write(show, taken, into);
            }
            return ExitCode.FINE;
        } catch (CannotBe e) {
            terminal.complain(e.why());
            return ExitCode.BLOCKED;
        }
    }

    private static Words wordsOf(Show show) {
        return new Words(show.figures(), show.terms());
    }

    private void tell(Conflict conflict, boolean theirs) {
        terminal.line("explained otherwise: " + conflict.name());
        terminal.line("    " + (theirs ? "      " : "kept: ") + Objects.requireNonNull(conflict.mine()));
        terminal.line("    " + (theirs ? "taken: " : "other: ") + conflict.theirs());
    }
}
