package crowdline.show.check;

import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.aircraft.TimedAircraft;
import crowdline.show.bounds.Written;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.figure.Figure;
import java.util.function.Consumer;

/** What nothing is computed for must be timed, and what is computed must begin somewhere. */
final class TimedRule implements ShowRule {
    @Override
    public void check(Show show, Catalogue catalogue, Consumer<Finding> findings) {
        for (int a = 0; a < show.acts().size(); a++) {
            Act act = show.acts().get(a);
            int at = a;
            show.aircraft(act.airframe()).ifPresent(aircraft -> {
                if (aircraft instanceof TimedAircraft timed) {
                    timed(act, at, timed, findings);
                } else {
                    begins(act, at, findings);
                }
            });
        }
    }

    private static void timed(Act act, int a, TimedAircraft aircraft, Consumer<Finding> findings) {
        for (int f = 0; f < act.figures().size(); f++) {
            Figure figure = act.figures().get(f);
            if (figure.durationS() == null) {
                findings.accept(new Finding(
                        Severity.ERROR,
                        "figure-without-length",
                        "the figure " + Written.quoted(figure.id()) + " has no durationS, and nothing is computed for "
                                + article(aircraft.what()) + "; say how many seconds it lasts",
                        At.figure(a, f)));
            }
        }
    }

    private static void begins(Act act, int a, Consumer<Finding> findings) {
        boolean flown = act.figures().stream().anyMatch(figure -> figure.durationS() == null);
        if (act.entry() == null && flown) {
            findings.accept(new Finding(
                    Severity.ERROR,
                    "no-entry",
                    "the act " + Written.quoted(act.id())
                            + " has no entry, so its figures cannot be computed; say where it begins, or time them all",
                    At.act(a)));
        }
    }

    private static String article(String what) {
        return what.startsWith("parachutists") ? what : "a " + what;
    }
}
