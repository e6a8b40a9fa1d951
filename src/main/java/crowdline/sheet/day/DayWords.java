package crowdline.sheet.day;

import crowdline.live.debrief.DayRun;
import crowdline.live.debrief.DayRun.ActRun;
import crowdline.live.debrief.DayRun.Flight;
import crowdline.live.debrief.Debrief;
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
import java.util.function.DoubleFunction;

/** What a chart shows, in words. */
public final class DayWords {
    /** How a chart is read. */
    public static final String HOW =
            "Bars: planned above, flown below, with what was said in it. A disc means said, a ring only shown, a"
                    + " cross still to be said.";

    /** Of less than this share of the time the microphone is not worth a word, of more it heard all there was. Tuned. */
    private static final double SOME_HEARD = 0.005;

    private static final double ALL_HEARD = 0.995;

    private final Debrief debrief;
    private final DayRun day;
    private final DoubleFunction<LocalTime> hour;
    private final DayCharts charts;

    private DayWords(Debrief debrief, DoubleFunction<LocalTime> hour) {
        this.debrief = debrief;
        this.hour = hour;
        day = debrief.day();
        charts = new DayCharts(debrief, DayHours.of(hour));
    }

    /** How another day is read in it. */
    public static String how(OtherDay other) {
        return "Hollow bars and dashed lines: " + other.name() + ".";
    }

    /** Of the day: a sentence each for talk and quiet, for every act and duty, and for what else there was. */
    public static List<String> day(Debrief debrief, DoubleFunction<LocalTime> hour) {
        return new DayWords(debrief, hour).day();
    }

    /** Of an act flown, counted from 0: how long it took, how late it was, talk and quiet, and what else there was in it. */
    public static List<String> run(Debrief debrief, DoubleFunction<LocalTime> hour, int run) {
        return new DayWords(debrief, hour).run(debrief.runs().get(run));
    }

    private List<String> day() {
        List<String> words = new ArrayList<>();
        Flight span = day.span();
        Double endS = span == null ? null : span.endS();
        if (span != null && endS != null) {
            words.add("From " + clock(span.startS()) + " to " + clock(endS) + ". " + talk(span.startS(), endS));
        }
        day.acts().forEach(act -> words.addAll(act(act)));
        day.duties().forEach(duty -> words.add(duty(duty)));
        words.addAll(DebriefSheet.announcements(debrief, hour));
        if (!debrief.incidents().isEmpty()) {
            words.addAll(DebriefSheet.incidents(debrief, hour));
        }
        words.addAll(DebriefSheet.notes(debrief, hour));
        return words;
    }

    private List<String> act(ActRun act) {
        String planned = Written.begun(act.title()) + ": planned for " + Hour.toTheMinute(act.slot());
        if (act.flights().isEmpty()) {
            return List.of(planned + (act.cancelled() ? ", cancelled." : ", not flown."));
        }
        return act.flights().stream()
                .map(flight -> {
                    Double endS = flight.endS();
                    String began = planned + ", began " + clock(flight.startS()) + ", "
                            + late(charts.lateMinutes(act, flight)) + ". ";
                    return endS == null ? began + "Still in the air." : began + talk(flight.startS(), endS);
                })
                .toList();
    }

    private static String late(double minutes) {
        long whole = Math.round(minutes);
        return whole == 0 ? "on time" : Math.abs(whole) + " min " + (whole > 0 ? "late" : "early");
    }

    private String duty(DutyRun duty) {
        String when = DutySheet.when(duty, hour);
        String asked = DutySheet.asked(duty);
        return "Duty: " + DutySheet.count(duty) + (when.isEmpty() ? "" : " (" + when + ")")
                + (asked.isEmpty() ? "" : ", " + asked) + ": " + duty.text();
    }

    private List<String> run(Run run) {
        List<String> words = new ArrayList<>();
        words.add(DebriefSheet.total(run) + ".");
        Double endS = run.sessionEndS();
        if (endS != null) {
            words.add(talk(run.sessionStartS(), endS));
        }
        words.addAll(lateFigures(run));
        double toS = endS == null ? Double.POSITIVE_INFINITY : endS;
        for (DutyRun duty : day.duties()) {
            List<String> when = duty.told().stream()
                    .filter(told -> told.atS() >= run.sessionStartS() && told.atS() <= toS)
                    .map(told -> (told.said() ? "said " : "shown ") + Hour.toTheSecond(hour.apply(told.atS())))
                    .toList();
            if (!when.isEmpty()) {
                words.add("Duty " + String.join(", ", when) + ": " + duty.text());
            }
        }
        return words;
    }

    /** How the lateness grew: at the figure that was latest and the one that was earliest, if it was a second or more. */
    private static List<String> lateFigures(Run run) {
        List<String> words = new ArrayList<>();
        FigureRun latest = null;
        FigureRun earliest = null;
        for (FigureRun figure : run.figures()) {
            latest = lateS(figure) >= 1 && (latest == null || lateS(figure) > lateS(latest)) ? figure : latest;
            earliest = lateS(figure) <= -1 && (earliest == null || lateS(figure) < lateS(earliest)) ? figure : earliest;
        }
        if (latest != null) {
            words.add("Latest: " + latest.name() + ", " + Math.round(lateS(latest)) + " s after its time.");
        }
        if (earliest != null) {
            words.add("Earliest: " + earliest.name() + ", " + Math.round(-lateS(earliest)) + " s before its time.");
        }
        if (latest == null && earliest == null) {
            words.add("No figure that is known of was a second early or late.");
        }
        return words;
    }

    private static double lateS(FigureRun figure) {
        Double lateS = figure.lateS();
        return lateS == null ? 0 : lateS;
    }

    /** "Talk 43%, quiet 57%, heard by the microphone; the longest quiet lasted 2:10, from 14:03." */
    private String talk(double fromS, double toS) {
        if (!day.knowsTalk(fromS, toS)) {
            return "How much was talked is not known: nothing is marked as said.";
        }
        long percent = Math.round(day.talkPercent(fromS, toS));
        double[] quiet = longestQuiet(fromS, toS);
        return "Talk " + percent + "%, quiet " + (100 - percent) + "%" + by(fromS, toS)
                + "; the longest quiet lasted "
                + RunningSheet.minutes(quiet[1] - quiet[0]) + ", from "
                + Hour.toTheSecond(hour.apply(quiet[0])) + ".";
    }

    /** How talk was measured. */
    private String by(double fromS, double toS) {
        double share = day.measuredShare(fromS, toS);
        if (share < SOME_HEARD) {
            return ", going by the keys";
        }
        return share > ALL_HEARD
                ? ", heard by the microphone"
                : ", " + Math.round(100 * share) + "% of the time heard by the microphone, the rest by keys";
    }

    private double[] longestQuiet(double fromS, double toS) {
        double[] longest = {fromS, fromS};
        double quietFromS = fromS;
        for (DayRun.Talked talked : day.talk()) {
            if (talked.toS() > fromS && talked.fromS() < toS) {
                longest = longer(longest, quietFromS, talked.fromS());
                quietFromS = Math.max(quietFromS, talked.toS());
            }
        }
        return longer(longest, quietFromS, toS);
    }

    private static double[] longer(double[] longest, double fromS, double toS) {
        return toS - fromS > longest[1] - longest[0] ? new double[] {fromS, toS} : longest;
    }

    private String clock(double sessionS) {
        return Hour.toTheMinute(hour.apply(sessionS));
    }
}
