package crowdline.console.live.day;

import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.theme.Tone;
import crowdline.live.now.Duties;
import crowdline.live.now.DutyNow;
import crowdline.live.now.DutyNow.State;
import crowdline.live.now.LiveNow;
import crowdline.live.state.LiveState;
import crowdline.loaded.ShowLookup;
import crowdline.show.Act;
import crowdline.show.figure.DutyTimes;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Says how the duties of the day stand. */
public final class DutiesPresenter {
    private static final List<State> PRESSING =
            List.of(State.OVERDUE, State.DUE, State.LATER, State.MISSED, State.DONE);

    private final ShowLookup words;
    private final LiveNow now;

    private DutiesPresenter(ShowLookup words, LiveNow now) {
        this.words = words;
        this.now = now;
    }

    /** The duties at a moment. */
    public static DutiesView of(LiveState state, LiveNow now, ShowLookup words) {
        DutiesPresenter presenter = new DutiesPresenter(words, now);
        return new DutiesView(Duties.of(words.show(), state, now).stream()
                .sorted(Comparator.<DutyNow>comparingInt(d -> PRESSING.indexOf(d.state()))
                        .thenComparingDouble(DutiesPresenter::until))
                .map(presenter::row)
                .toList());
    }

    private static double until(DutyNow duty) {
        Double untilS = duty.untilS();
        return untilS == null ? Double.POSITIVE_INFINITY : untilS;
    }

    private DutiesView.Row row(DutyNow duty) {
        return new DutiesView.Row(
                duty.remark().id(),
                mark(duty),
                Math.min(duty.told().size(), duty.asked().times()) + " of "
                        + duty.asked().times(),
                duty.remark().words(true),
                when(duty));
    }

    private static Mark mark(DutyNow duty) {
        return switch (duty.state()) {
            case OVERDUE -> new Mark(Form.STOP, Tone.ALARM, "Overdue");
            case DUE -> new Mark(Form.UP, Tone.CAUTION, "Due");
            case LATER -> new Mark(Form.RING, Tone.CALM, "Later");
            case MISSED -> new Mark(Form.CROSS, Tone.CAUTION, "Too late");
            case DONE ->
                duty.saidCount() == duty.told().size()
                        ? new Mark(Form.DISC, Tone.GOOD, "Said")
                        : new Mark(Form.DIAMOND, Tone.CAUTION, "Shown");
        };
    }

    /** "said 14:02, shown 14:31, by 15:20". */
    private String when(DutyNow duty) {
        List<String> parts = new ArrayList<>();
        if (!duty.told().isEmpty()) {
            parts.add(duty.told().stream()
                    .map(t -> (t.said() ? "said " : "shown ") + hour(t.atS()))
                    .collect(Collectors.joining(", ")));
        }
        DutyTimes asked = duty.asked();
        Double fromS = duty.fromS();
        Double untilS = duty.untilS();
        if (fromS != null) {
            parts.add((duty.told().isEmpty() ? "from " : "again from ") + hour(fromS));
        } else if (duty.state() == State.LATER) {
            parts.add("after " + title(asked.afterAct()));
        } else if (duty.state() == State.MISSED) {
            parts.add("was for before " + title(asked.beforeAct()));
        } else if (untilS != null) {
            parts.add("by " + hour(untilS));
        }
        boolean open = duty.state() == State.DUE || duty.state() == State.OVERDUE;
        if (open && !asked.inActs()) {
            parts.add("between acts");
        }
        return String.join(", ", parts);
    }

    private String title(@Nullable String actId) {
        return words.act(actId).map(Act::title).orElse("its act");
    }

    private String hour(double atS) {
        LocalDateTime at =
                LocalDateTime.ofInstant(now.wall().plusMillis(Math.round((atS - now.nowS()) * 1000)), words.zone());
        return OrderPresenter.hour(at);
    }
}
