package crowdline.sheet.day;

import crowdline.live.debrief.DayRun;
import crowdline.live.debrief.DayRun.ActRun;
import crowdline.live.debrief.DayRun.Flight;
import crowdline.live.debrief.Debrief.FigureRun;
import crowdline.live.debrief.Debrief.Run;
import crowdline.live.debrief.DutyRun;
import crowdline.measure.Hour;
import crowdline.sheet.DebriefSheet;
import crowdline.sheet.DutySheet;
import crowdline.sheet.RunningSheet;
import crowdline.show.bounds.Written;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.DoubleFunction;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Two days of one show beside each other: when each act began, how late, how long it took and how much of it was talk. */
public final class DayBeside {
    private static final String UNKNOWN = "–";

    private DayBeside() {}

    /**
     * The days, act by act.
     *
     * @param hour the clock at the venue at a second of the day's session
     * @param otherHour the same of the other's
     */
    public static List<String> lines(
            DayRun day, DoubleFunction<LocalTime> hour, DayRun other, DoubleFunction<LocalTime> otherHour) {
        List<String> lines = new ArrayList<>();
        lines.add(row("", "this day", "", "", "other day", "", ""));
        lines.add(row("act", "began", "lasted", "talk", "began", "lasted", "talk"));
        for (ActRun act : day.acts()) {
            ActRun then = act(other, act.actId());
            String[] here = cells(day, act, hour);
            String[] there = cells(other, then, otherHour);
            lines.add(row(act.title(), here[0], here[1], here[2], there[0], there[1], there[2]));
        }
        for (DutyRun duty : day.duties()) {
            DutyRun then = duty(other, duty.remarkId());
            lines.add("duty: " + duty.text() + ": " + DutySheet.count(duty) + "; on the other day "
                    + (then == null ? "unknown" : DutySheet.count(then).toLowerCase(Locale.UK)));
        }
        return lines;
    }

    /**
     * The same in sentences, with what cannot be compared.
     *
     * @param hour the clock at the venue at a second of the day's session
     */
    public static List<String> sentences(DayRun day, DoubleFunction<LocalTime> hour, OtherDay other) {
        List<String> words = new ArrayList<>(other.lacks());
        DayRun then = other.debrief().day();
        words.add("In brackets: " + other.name() + ".");
        for (ActRun act : day.acts()) {
            String[] here = cells(day, act, hour);
            String[] there = cells(then, act(then, act.actId()), other.hour());
            words.add(Written.begun(act.title()) + ": " + sentence(here, there) + ".");
        }
        for (DutyRun duty : day.duties()) {
            DutyRun told = duty(then, duty.remarkId());
            words.add("Duty: " + DutySheet.count(duty) + " (" + (told == null ? "unknown" : DutySheet.count(told))
                    + "): " + duty.text());
        }
        return words;
    }

    private static String sentence(String[] here, String[] there) {
        boolean both = !here[1].equals(UNKNOWN) && !there[1].equals(UNKNOWN);
        return both
                ? "began " + here[0] + " (" + there[0] + "), lasted " + here[1] + " (" + there[1] + "), talk " + here[2]
                        + " (" + there[2] + ")"
                : sentence(here) + " (" + sentence(there) + ")";
    }

    private static String sentence(String[] day) {
        if (day[1].equals(UNKNOWN)) {
            return day[0].equals(UNKNOWN)
                    ? "unknown"
                    : Character.isDigit(day[0].charAt(0)) ? "began " + day[0] : day[0];
        }
        return "began " + day[0] + ", lasted " + day[1] + ", talk " + day[2];
    }

    /** True if an act flown was flown in that variant on another day, so that it can be set beside it. */
    public static boolean isFlown(Run run, OtherDay other) {
        return RunChart.same(run, other.debrief()).isPresent();
    }

    /** What another day says of an act flown, in sentences. */
    public static List<String> sentences(Run run, OtherDay other) {
        Run then = RunChart.same(run, other.debrief()).orElse(null);
        if (then == null) {
            return List.of("This act was not flown as \"" + run.variant() + "\" on " + other.name()
                    + ", so nothing is set beside it.");
        }
        Double endS = then.sessionEndS();
        String began = Written.begun(other.name()) + ": began "
                + Hour.toTheMinute(other.hour().apply(then.sessionStartS())) + ", " + DebriefSheet.total(then);
        List<String> words = new ArrayList<>();
        words.add(
                endS == null
                        ? began + "."
                        : began + ". Talk "
                                + talk(other.debrief().day(), then.sessionStartS(), endS)
                                        .replace(' ', '\u00a0')
                                + ".");
        String onlyHere = names(run, then);
        String onlyThere = names(then, run);
        if (!onlyHere.isEmpty()) {
            words.add("Not flown on " + other.name() + ": " + onlyHere + ".");
        }
        if (!onlyThere.isEmpty()) {
            words.add("Flown on " + other.name() + " alone: " + onlyThere + ".");
        }
        return words;
    }

    /** The figures flown in one flight and not in the other. */
    private static String names(Run in, Run notIn) {
        Set<String> flown = notIn.figures().stream()
                .filter(figure -> figure.startS() != null)
                .map(FigureRun::figureId)
                .collect(Collectors.toSet());
        return in.figures().stream()
                .filter(figure -> figure.startS() != null && !flown.contains(figure.figureId()))
                .map(FigureRun::name)
                .distinct()
                .collect(Collectors.joining(", "));
    }

    private static @Nullable ActRun act(DayRun day, String actId) {
        return day.acts().stream()
                .filter(act -> act.actId().equals(actId))
                .findFirst()
                .orElse(null);
    }

    private static @Nullable DutyRun duty(DayRun day, String remarkId) {
        return day.duties().stream()
                .filter(duty -> duty.remarkId().equals(remarkId))
                .findFirst()
                .orElse(null);
    }

    private static String talk(DayRun day, double fromS, double toS) {
        return day.knowsTalk(fromS, toS) ? Math.round(day.talkPercent(fromS, toS)) + "%" : UNKNOWN;
    }

    private static String[] cells(DayRun day, @Nullable ActRun act, DoubleFunction<LocalTime> hour) {
        if (act == null || act.flights().isEmpty()) {
            return new String[] {act == null ? UNKNOWN : act.cancelled() ? "cancelled" : "not flown", UNKNOWN, UNKNOWN};
        }
        Flight flight = act.flights().get(0);
        Double endS = flight.endS();
        String began = Hour.toTheMinute(hour.apply(flight.startS()));
        return endS == null
                ? new String[] {began, UNKNOWN, UNKNOWN}
                : new String[] {began, RunningSheet.minutes(endS - flight.startS()), talk(day, flight.startS(), endS)};
    }

    private static String row(String... cells) {
        return String.format(
                        Locale.UK,
                        "%-32s %10s %8s %6s %12s %8s %6s",
                        cells[0].length() <= 32 ? cells[0] : cells[0].substring(0, 31) + "…",
                        cells[1],
                        cells[2],
                        cells[3],
                        cells[4],
                        cells[5],
                        cells[6])
                .stripTrailing();
    }
}
