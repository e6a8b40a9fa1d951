package crowdline.speech.plain;

import java.util.Map;
import java.util.Set;

/** Words of flying that a family on the crowd line does not know, with a plain way to put each. Our own wording. */
public final class TradeTerms {

    /** From the word in lower case to the plain way of saying it. */
    public static final Map<String, String> PLAIN = Map.ofEntries(
            Map.entry("aileron", "the moving panel near the wing tip that rolls the aeroplane"),
            Map.entry("elevator", "the moving panel on the tail that lifts or lowers the nose"),
            Map.entry("rudder", "the moving panel on the fin that swings the nose left or right"),
            Map.entry("flaps", "the panels behind the wing that help it fly slowly"),
            Map.entry("empennage", "the tail"),
            Map.entry("angle of attack", "how steeply the wing meets the air"),
            Map.entry("autorotation", "turning by itself because one wing has stopped lifting"),
            Map.entry("stall", "the wing stops lifting"),
            Map.entry("stalled", "no longer lifting"),
            Map.entry("departure", "the moment it leaves controlled flight"),
            Map.entry("yaw", "swing the nose left or right"),
            Map.entry("pitch", "lift or lower the nose"),
            Map.entry("sideslip", "flying a little sideways"),
            Map.entry("knife edge", "flying on its side, wings straight up and down"),
            Map.entry("inverted", "upside down"),
            Map.entry("negative g", "being pushed up out of the seat"),
            Map.entry("positive g", "being pressed into the seat"),
            Map.entry("load factor", "how many times its own weight the wing carries"),
            Map.entry("gyroscopic", "because a spinning propeller resists being tipped"),
            Map.entry("precession", "the sideways push of a tipped spinning propeller"),
            Map.entry("torque", "the engine's twist"),
            Map.entry("slipstream", "the air behind the propeller"),
            Map.entry("density altitude", "how high the aeroplane feels it is on a warm day"),
            Map.entry("altitude", "height"),
            Map.entry("airspeed", "speed through the air"),
            Map.entry("groundspeed", "speed over the ground"),
            Map.entry("knots", "nautical miles an hour; add the miles an hour"),
            Map.entry("datum", "the middle of the display, in front of us"),
            Map.entry("display axis", "the line along the crowd"),
            Map.entry("energy", "speed and height together"),
            Map.entry("up-line", "the climb straight up"),
            Map.entry("down-line", "the dive straight down"),
            Map.entry("flick", "a very fast roll with the wing stalled"),
            Map.entry("hesitation", "a short stop during the roll"),
            Map.entry("wing loading", "how much weight each piece of wing carries"),
            Map.entry("power loading", "how much weight each horsepower moves"),
            Map.entry("aspect ratio", "how long and slim the wing is"),
            Map.entry("dihedral", "the upward tilt of the wings"),
            Map.entry("nacelle", "the housing of the engine"),
            Map.entry("cowling", "the cover of the engine"));

    /**
     * Names of figures that say themselves what is seen, or that every family knows; no trade words. Common practice, no
     * source.
     */
    public static final Set<String> EVERYDAY = Set.of(
            "take-off",
            "landing",
            "touchdown",
            "low pass",
            "fly-past",
            "flypast",
            "fly-by",
            "upside-down pass",
            "vertical climb",
            "dive",
            "dive in",
            "loop",
            "square loop",
            "loop with corners",
            "loop with a roll on top",
            "loop with a full roll",
            "half loop with roll out on top",
            "half loop with half roll",
            "full roll",
            "three aileron rolls",
            "rolls left and right",
            "opposite rolls",
            "half roll",
            "slow roll",
            "triple roll",
            "spin",
            "upside-down spin",
            "flat spin",
            "steep turn",
            "tight turn",
            "display turn",
            "turn back",
            "tumble",
            "climbing half turn",
            "salute",
            "wing rock",
            "wing waggle",
            "vertical roll",
            "sloping climb with roll",
            "rolling turn",
            "rolling circle",
            "pull to vertical",
            "lying eight");

    private TradeTerms() {}
}
