package crowdline.edit.act;

import crowdline.arrange.ShowArranging;
import crowdline.edit.Change;
import crowdline.list.about.AboutAct;
import crowdline.list.line.FigureList;
import crowdline.list.line.ListLine;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.aircraft.Kind;
import crowdline.show.aircraft.Sliders;
import crowdline.show.aircraft.TimedAircraft;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.check.Finding;
import crowdline.show.check.Severity;
import java.time.LocalTime;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Adds an act, ahead of the first that begins later: from a pilot's list, or from nothing. Its words are drafted; all of it is
 * one change.
 */
public final class AddAct {
    private static final String TAKE_OFF = "take-off";
    private static final LocalTime FIRST_SLOT = LocalTime.of(14, 0);
    private static final double SECONDS = 60;

    private final Catalogue shipped;
    private final FirstDraft draft;

    /**
     * What is known of an act beside its figures.
     *
     * @param kind what flies it
     * @param number how many they are, or null if that is not known
     * @param title how it is announced; empty for what the kind is called
     * @param performer who flies it; empty if nobody said
     * @param aircraft what it is flown in is called; empty for what the kind is called
     * @param slot when it begins by the clock at the venue
     */
    public record Wanted(
            Kind kind, @Nullable Integer number, String title, String performer, String aircraft, LocalTime slot) {
        /** In an aircraft that has no name but its kind's. */
        public Wanted(Kind kind, @Nullable Integer number, String title, String performer, LocalTime slot) {
            this(kind, number, title, performer, "", slot);
        }

        String named() {
            if (!title.isBlank()) {
                return title.strip();
            }
            return performer.isBlank() ? called() : performer.strip() + ", " + called();
        }

        /** The name of the aircraft. */
        String called() {
            return aircraft.isBlank() ? kind.name() : aircraft.strip();
        }
    }

    /** @param draft writes the words */
    public AddAct(Catalogue shipped, FirstDraft draft) {
        this.shipped = shipped;
        this.draft = draft;
    }

    /** The clock time at which the last act of the running order is over; the afternoon's first if there is none. */
    public static LocalTime nextSlot(Show show) {
        if (show.acts().isEmpty()) {
            return FIRST_SLOT;
        }
        Act last = show.acts().get(show.acts().size() - 1);
        return last.slotStart().plusMinutes((long) Math.ceil(last.slotMinutes()));
    }

    /** Adds the act of a list; where its letter says how long all of it takes, the slot is so long. */
    public Edit fromList(FigureList list, Wanted wanted) {
        return fromList(list, wanted, AboutAct.of(list).minutes());
    }

    /**
     * Adds the act of a list.
     *
     * @param minutes how long its slot is, above 0; null, it follows from the figures
     */
    public Edit fromList(FigureList list, Wanted wanted, @Nullable Double minutes) {
        Edit edit = show -> {
            for (Finding finding : list.findings()) {
                if (finding.severity() == Severity.ERROR) {
                    throw new CannotBe(finding.message());
                }
            }
            return added(show, list, wanted, minutes);
        };
        return edit.refusing();
    }

    /**
     * Adds an act of which only its length is known: one that flies begins with a take-off and goes on as figures are
     * added, one that is only timed takes its minutes.
     *
     * @param minutes how long it takes, above 0
     */
    public Edit fromNothing(Wanted wanted, double minutes) {
        ListLine first =
                wanted.kind().flies() ? line(TAKE_OFF, TAKE_OFF, null) : line(wanted.named(), null, minutes * SECONDS);
        Edit edit = show -> {
            Change change = added(show, new FigureList(List.of(first), List.of(), List.of()), wanted, null);
            Act act = added(show, change.show());
            return Change.of(change.name(), change.show().withAct(act.withSlot(act.slotStart(), minutes)));
        };
        return edit.refusing();
    }

    /**
     * The act that was added, which stands where its slot puts it.
     *
     * @throws java.util.NoSuchElementException if none was
     */
    public static Act added(Show before, Show after) {
        return after.acts().stream()
                .filter(act -> before.act(act.id()).isEmpty())
                .findFirst()
                .orElseThrow();
    }

    private static ListLine line(String text, @Nullable String figure, @Nullable Double seconds) {
        return ListLine.of(text, figure, text, seconds, figure != null, List.of());
    }

    private Change added(Show show, FigureList list, Wanted wanted, @Nullable Double minutes) {
        Kind kind = wanted.kind();
        ShowArranging.Made made = new ShowArranging(shipped)
                .add(
                        show,
                        list,
                        id -> kind.flies()
                                ? kind.airframe(id, wanted.called(), Sliders.TYPICAL)
                                : new TimedAircraft(id, wanted.called(), kind, wanted.number()),
                        new ShowArranging.About(
                                wanted.named(),
                                wanted.performer().isBlank()
                                        ? null
                                        : wanted.performer().strip(),
                                wanted.slot(),
                                minutes));
        return Change.of("Add act " + Found.quoted(wanted.named()), draft.of(made.show(), made.act()));
    }
}
