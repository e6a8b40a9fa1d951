package crowdline.console.live.day;

import crowdline.console.keys.Command;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.theme.Tone;
import crowdline.live.event.AnnouncementEvent;
import crowdline.live.event.FlightEvent;
import crowdline.live.event.IncidentEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.ShowEvent;
import crowdline.live.event.Source;
import crowdline.live.event.TalkEvent;
import crowdline.live.state.LiveState;
import crowdline.loaded.ShowLookup;
import crowdline.running.Told;
import crowdline.show.Act;
import crowdline.show.figure.RemarkForm;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Says in large type what a key did where the rows do not show it by themselves, and what was taken back. */
public final class ToldPresenter {
    /** As much of a remark as is read at a glance, in letters. */
    private static final int GLANCE = 44;

    private ToldPresenter() {}

    /** What the last key did, or why it did nothing; empty if the rows show it. */
    public static Optional<Mark> of(Told told, ShowLookup words) {
        if (told instanceof Told.Did did) {
            return of(did.event(), did.before(), did.after(), words);
        }
        String why =
                told instanceof Told.Refused refused ? refused.why() : nothingTakenBack((Told.NothingToTakeBack) told);
        return Optional.of(new Mark(Form.DIAMOND, Tone.CAUTION, why));
    }

    /** What is said when the last key did nothing: whoever takes it back means that key. */
    private static String nothingTakenBack(Told.NothingToTakeBack told) {
        return "The last key (" + told.key() + ") did nothing, so nothing was taken back.";
    }

    /** What a key did, from the state before it and the one after; empty if the rows show it. */
    public static Optional<Mark> of(LiveEvent event, LiveState before, LiveState after, ShowLookup words) {
        if (event instanceof LiveEvent.Undone) {
            return before.takeBack()
                    .map(back -> new Mark(
                            Form.DISC,
                            Tone.CALM,
                            "Took back: " + key(back) + " (" + what(back, after, before, words) + ")"));
        }
        boolean shown = event instanceof FlightEvent.Stepped
                || event instanceof FlightEvent.ActStarted
                || event instanceof FlightEvent.CameBack
                || event instanceof FlightEvent.WentOffPlan
                || event instanceof FlightEvent.Held
                || event instanceof FlightEvent.Released
                || event instanceof LiveEvent.NoteMade
                || event instanceof IncidentEvent
                || (event instanceof AnnouncementEvent && !(event instanceof AnnouncementEvent.AnnouncementRead))
                || (event instanceof TalkEvent && !(event instanceof TalkEvent.RemarkSkipped));
        return shown
                ? Optional.empty()
                : Optional.of(new Mark(Form.DISC, Tone.CALM, capital(what(event, before, after, words))));
    }

    /** The key that does this. */
    private static String key(LiveEvent event) {
        Command command = Command.TAKE_BACK;
        if (event instanceof FlightEvent.ActChosen) {
            // N chooses the next one, Ctrl+Enter any.
            return "the choice";
        }
        if (event instanceof FlightEvent flight) {
            command = command(flight);
        } else if (event instanceof TalkEvent talk) {
            command = talk instanceof TalkEvent.RemarkSaid
                    ? Command.SAID
                    : talk instanceof TalkEvent.RemarkSkipped ? Command.NOT_SAID : Command.FILLER;
            if (talk instanceof TalkEvent.RemarkStarted) {
                return "the fact";
            }
        } else if (event instanceof LiveEvent.NoteMade) {
            command = Command.JOT;
        } else if (event instanceof LiveEvent.HandedOver) {
            command = Command.HAND_OVER;
        } else if (event instanceof AnnouncementEvent) {
            return "the announcement";
        } else if (event instanceof ShowEvent) {
            return event instanceof ShowEvent.ShowEnded ? "the end of the show" : "the running order";
        }
        return command.key();
    }

    private static Command command(FlightEvent event) {
        if (event instanceof FlightEvent.SourceChosen chosen) {
            return switch (chosen.source()) {
                case HAND -> Command.BY_HAND;
                case CLOCK -> Command.BY_CLOCK;
                case AIRCRAFT -> Command.BY_AIRCRAFT;
            };
        }
        return event instanceof FlightEvent.SteppedBack
                ? Command.BACK
                : event instanceof FlightEvent.Held || event instanceof FlightEvent.Released
                        ? Command.HOLD
                        : event instanceof FlightEvent.NextDropped
                                ? Command.DROP
                                : event instanceof FlightEvent.DropUndone
                                        ? Command.UNDROP
                                        : event instanceof FlightEvent.NextSwapped
                                                ? Command.SWAP
                                                : event instanceof FlightEvent.WentOffPlan
                                                        ? Command.OFF_PLAN
                                                        : choice(event);
    }

    private static Command choice(FlightEvent event) {
        return event instanceof FlightEvent.VariantChosen
                ? Command.VARIANT
                : event instanceof FlightEvent.ActEnded ? Command.END_ACT : Command.NEXT;
    }

    /** What an event did, without a capital. */
    private static String what(LiveEvent event, LiveState before, LiveState after, ShowLookup words) {
        if (event instanceof FlightEvent.SourceChosen chosen) {
            return "following the " + source(chosen.source());
        }
        if (event instanceof FlightEvent.VariantChosen variant) {
            return "variant \"" + variant.variant() + "\"";
        }
        if (event instanceof FlightEvent.ActChosen chosen) {
            return "act \"" + words.act(chosen.actId()).map(Act::title).orElse("?") + "\"";
        }
        if (event instanceof ShowEvent changed) {
            return OrderTold.what(changed, after, words);
        }
        if (event instanceof FlightEvent.NextDropped) {
            return "dropped " + named(before, dropped(after, before), words);
        }
        if (event instanceof FlightEvent.DropUndone) {
            return named(before, dropped(before, after), words) + " will be flown after all";
        }
        if (event instanceof FlightEvent.NextSwapped) {
            return named(after, next(after, 0), words) + " now comes before " + named(after, next(after, 1), words);
        }
        if (event instanceof LiveEvent.HandedOver over) {
            return over.toOther() ? "the other speaks next" : "you speak next";
        }
        if (event instanceof AnnouncementEvent.AnnouncementRead read) {
            return "\"" + read.occasion() + "\" is noted as read out";
        }
        if (event instanceof LiveEvent.NoteMade) {
            return "the note of that moment";
        }
        if (event instanceof LiveEvent.NoteWritten) {
            return "the note is kept";
        }
        if (event instanceof TalkEvent talk) {
            return talk(talk, words);
        }
        return step(event, after, words);
    }

    private static String talk(TalkEvent event, ShowLookup words) {
        String text = "\""
                + words.remark(event.remarkId())
                        .map(r -> glance(r.words(form(event) == RemarkForm.SHORT)))
                        .orElse("?")
                + "\"";
        return event instanceof TalkEvent.RemarkSkipped
                ? "left out " + text
                : event instanceof TalkEvent.RemarkSaid ? text + " said" : text;
    }

    private static RemarkForm form(TalkEvent event) {
        return event instanceof TalkEvent.RemarkSaid said ? said.form() : RemarkForm.FULL;
    }

    private static String step(LiveEvent event, LiveState after, ShowLookup words) {
        if (event instanceof FlightEvent.Held) {
            return "on hold";
        }
        if (event instanceof FlightEvent.Released) {
            return "carried on";
        }
        if (event instanceof FlightEvent.WentOffPlan) {
            return "off the plan";
        }
        String figureId = after.figureId();
        boolean back = event instanceof FlightEvent.SteppedBack;
        if (figureId == null) {
            boolean waits = after.course().actStartedAtS() == null;
            return back ? waits ? "back to before the act" : "back off the plan" : "the act is over";
        }
        return back ? "back to " + named(after, figureId, words) : named(after, figureId, words) + " began";
    }

    /** The figure that is dropped in one state and not in the other; it comes after the ways that lead to it. */
    private static @Nullable String dropped(LiveState in, LiveState notIn) {
        return in.course().droppedIds().stream()
                .filter(id -> !notIn.course().droppedIds().contains(id))
                .reduce((way, figure) -> figure)
                .orElse(null);
    }

    /** The figure that is flown next, or with {@code skip} 1 the one after it. */
    private static @Nullable String next(LiveState state, int skip) {
        return state.course().figuresAhead().skip(skip).findFirst().orElse(null);
    }

    private static String named(LiveState state, @Nullable String figureId, ShowLookup words) {
        Act act = words.act(state.actId()).orElse(null);
        return figureId == null ? "a figure" : "\"" + words.name(act, state.variant(), figureId) + "\"";
    }

    private static String source(Source source) {
        return switch (source) {
            case HAND -> "keys";
            case CLOCK -> "clock";
            case AIRCRAFT -> "aircraft";
        };
    }

    private static String glance(String text) {
        return text.length() <= GLANCE ? text : text.substring(0, text.lastIndexOf(' ', GLANCE)) + "\u2026";
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
