package crowdline.app.command;

import crowdline.flight.FigureFlight;
import crowdline.measure.Hour;
import crowdline.sheet.RunningSheet;
import crowdline.sight.Daylight;
import crowdline.sight.FigureSight;
import crowdline.sight.Glare;
import crowdline.sight.Sound;
import crowdline.sight.fact.CrowdFact;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** The facts of an act as text: each with the number behind it, and under each figure where to look. */
final class FactTable {
    private static final DateTimeFormatter BEGINS = DateTimeFormatter.ofPattern("d MMMM uuuu, HH:mm", Locale.UK);

    private FactTable() {}

    static List<String> lines(FactsCommand.Told told) {
        List<String> lines = new ArrayList<>();
        lines.add(told.act().title());
        lines.add("Variant \"" + told.flight().variant() + "\", beginning " + BEGINS.format(told.begins()) + "."
                + daylight(told.daylight()));
        lines.add("");
        lines.add("the whole act");
        facts(told, null, lines);
        for (FigureFlight f : told.flight().figures()) {
            lines.add("");
            lines.add(RunningSheet.minutes(f.startS()) + "  " + f.name());
            FigureSight sight = told.sightOf(f.figureId());
            if (sight != null) {
                lines.add(line("begins", sight.start()));
                lines.add(line("highest", sight.highest()));
            }
            if (!f.completed()) {
                lines.add("  no facts: the prediction found no way to fly it to its end");
            }
            facts(told, f.figureId(), lines);
        }
        lines.add("");
        return lines;
    }

    private static void facts(FactsCommand.Told told, @Nullable String figureId, List<String> lines) {
        told.factsOf(figureId).forEach(fact -> lines.add(line(fact)));
        told.unmadeOf(figureId).forEach(why -> lines.add("  no fact: " + why));
    }

    private static String daylight(Daylight day) {
        ZonedDateTime sunset = day.sunset();
        ZonedDateTime dusk = day.dusk();
        return (sunset == null ? "" : " Sunset " + Hour.toTheMinute(sunset) + ".")
                + (dusk == null ? "" : " Civil twilight ends " + Hour.toTheMinute(dusk) + ".");
    }

    private static String line(CrowdFact fact) {
        return String.format(Locale.UK, "  %,9.1f %-14s %s", fact.number(), fact.unit(), fact.text());
    }

    private static String line(String when, FigureSight.Glimpse seen) {
        Glare glare = seen.glare();
        return String.format(
                Locale.UK,
                "  %-7s look %s; %,.0f m; %s; as wide as %s%s",
                when,
                seen.look().words(),
                seen.look().slantM(),
                Sound.words(seen.soundDelayS()),
                seen.size().like(),
                glare != null && glare.intoSun() ? "; " + Glare.WORDS : "");
    }
}
