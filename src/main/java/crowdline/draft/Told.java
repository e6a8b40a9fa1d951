package crowdline.draft;

import crowdline.show.aircraft.Aircraft;
import crowdline.show.aircraft.Airframe;
import crowdline.show.aircraft.Engine;
import crowdline.show.aircraft.Kinds;
import crowdline.show.aircraft.TimedAircraft;
import crowdline.show.catalogue.CatalogueEntry;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What the glossary tells of a figure, as it is said of this aircraft. */
final class Told {
    /** Typical numbers of the glossary: another aircraft, or another pilot, has others. */
    private static final Pattern TYPICAL = Pattern.compile(
            "(?i)normal weight|about (one|two|three|four|five) seconds|takes eight|(one|two|three|four) times|cup of tea"
                    + "|nose high|nose hides|tail up|four minutes");

    private static final Pattern ENGINE = Pattern.compile("(?i)\\b(power|engine('s)?|propeller|gauges|throttle)\\b");
    private static final Pattern WHEELS = Pattern.compile("(?i)\\bwheels?\\b");
    private static final Pattern SMOKE = Pattern.compile("(?i)\\bsmoke\\b");
    /** A piston engine above this is in an aircraft whose wheels fold away; judgement, no source. */
    private static final double FOLDING_KW = 500;

    private static final Pattern PROPELLER = Pattern.compile("(?i)\\bpropeller\\b");
    /** What a phrase that needs no verb begins with. */
    private static final Pattern PHRASE =
            Pattern.compile("(A|An|Half|Most|One|Two|Three|Straight|Up|Several) .*", Pattern.DOTALL);
    /** What names a thing but says nothing of it yet: a sentence to come after "the hard part is". */
    private static final Pattern PART = Pattern.compile("([A-Z][a-z]+ing|A long) .*", Pattern.DOTALL);

    private static final int LONGEST_GLOSS = 13;
    private static final String PARACHUTING = "parachuting";

    private final CatalogueEntry entry;
    private final @Nullable Aircraft craft;
    private final boolean smoke;

    /** @param smoke whether there is smoke to be seen */
    Told(CatalogueEntry entry, @Nullable Aircraft craft, boolean smoke) {
        this.smoke = smoke;
        this.entry = entry;
        this.craft = craft;
    }

    /** The few words of what it is that can follow how it is called; null if it has none, or none that are not in there. */
    @Nullable
    String gloss(String called) {
        String first = Sentences.of(what()).stream().findFirst().orElse("");
        if (!PHRASE.matcher(first).matches() || first.contains(", but")) {
            return null;
        }
        int colon = first.indexOf(':');
        String cut = colon > 0 ? first.substring(0, colon) : first.replaceFirst("\\.$", "");
        int words = cut.split("\\s+").length;
        long twice = Stream.of(called.split("\\W+"))
                .filter(w -> w.length() > 3 && cut.contains(w))
                .count();
        return words >= 3 && words <= LONGEST_GLOSS && twice < 2 ? Sentences.within(cut) : null;
    }

    /** What it is. */
    String what(boolean once) {
        return !once && entry.whatItIs().startsWith("A full") ? "" : what();
    }

    private String what() {
        return isItsOwn() || isPass() ? fitting(entry.whatItIs()) : "";
    }

    /** What to look for. */
    String look() {
        return isItsOwn() || isPass() ? fitting(entry.lookFor()) : "";
    }

    /** Why it is hard. */
    String why() {
        String why = isItsOwn() ? fitting(entry.whyHard()) : "";
        return PART.matcher(why).matches() ? "The hard part: " + Sentences.within(why) : why;
    }

    /** What the pilot feels. */
    String feels() {
        String feels = isItsOwn() ? fitting(entry.pilotFeels()) : "";
        if (feels.isEmpty()) {
            return "";
        }
        String who = entry.family().equals(PARACHUTING)
                ? "For the jumper"
                : isFormation() ? "For each pilot" : "For the pilot";
        return who + (feels.startsWith("Like ") ? " it is " : ": ") + Sentences.within(feels);
    }

    /** What hands and feet do. */
    String hands() {
        String hands = isItsOwn() ? fitting(entry.handsAndFeet()) : "";
        hands = hands.replace("stick hand", "hand on the stick")
                .replaceAll("(power hand [a-z ]*) the throttle", "$1 it")
                .replace("power hand", "hand on the throttle");
        return hands.matches("(?s)(The|One hand) .*") ? "In the cockpit, " + Sentences.within(hands) : hands;
    }

    /**
     * Whether the glossary means what flies here: one aeroplane has no leader, a helicopter takes off with no push in the
     * back, and nobody under a parachute adds power.
     */
    private boolean isItsOwn() {
        String family = entry.family();
        if (craft instanceof TimedAircraft timed) {
            return switch (timed.kind().name()) {
                case Kinds.HELICOPTER -> family.equals("helicopter");
                case Kinds.PARACHUTISTS -> family.equals(PARACHUTING);
                // It may be an airliner or a balloon.
                case Kinds.FLY_PAST ->
                    !isPass()
                            && (!family.equals("coming and going")
                                    || entry.name().equals("wing rock"));
                default -> true;
            };
        }
        return !family.equals("formation");
    }

    private boolean isFormation() {
        return craft instanceof TimedAircraft timed && timed.kind().name().equals(Kinds.FORMATION);
    }

    /** Whether it is only flown past, as whatever flies can. */
    private boolean isPass() {
        return entry.name().equals("low pass") && !(craft instanceof Airframe);
    }

    /** Whether the wheels are out of sight in the air: a glider has one, half of it inside. */
    private boolean wheelsFold() {
        return !entry.family().equals("coming and going")
                && craft instanceof Airframe airframe
                && (airframe.glider()
                        || airframe.engine() instanceof Engine.Jet
                        || (airframe.engine() instanceof Engine.Propeller propeller
                                && propeller.powerKw() > FOLDING_KW));
    }

    /** The sentences that are true of this aircraft, in its own word. */
    private String fitting(String text) {
        String here = text.replace("the grass", "the ground");
        if (!smoke) {
            here = here.replace(" out of its own smoke", "").replace("Follow the smoke and look", "Look");
        }
        List<String> kept = new ArrayList<>(Sentences.of(here));
        kept.removeIf(s -> (!smoke && SMOKE.matcher(s).find())
                || (wheelsFold() && WHEELS.matcher(s).find()));
        kept.removeIf(s -> TYPICAL.matcher(s).find());
        if (craft instanceof Airframe airframe && !(airframe.engine() instanceof Engine.Propeller)) {
            Pattern wrong = airframe.glider() ? ENGINE : PROPELLER;
            kept.removeIf(s -> wrong.matcher(s).find());
        }
        String joined = kept.stream().map(Sentences::stopped).collect(Collectors.joining(" "));
        if (isFormation() && !entry.family().equals("formation")) {
            return joined.replace("The pilot ", "Each pilot ")
                    .replace("the pilot ", "each pilot ")
                    .replace("The aeroplane ", "Each aeroplane ")
                    .replace("the aeroplane ", "each aeroplane ");
        }
        return craft instanceof Airframe airframe && airframe.glider()
                ? joined.replace("aeroplane", "glider")
                        .replace("the sound rising", "the wind rising")
                        .replace("the wheels touch", "the wheel touches")
                        .replace("the wheels", "the wheel")
                : joined;
    }
}
