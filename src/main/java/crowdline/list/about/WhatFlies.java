package crowdline.list.about;

import crowdline.list.line.FigureList;
import crowdline.show.aircraft.Kind;
import crowdline.show.aircraft.Kinds;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Which kind of aircraft a letter names, in what stands around its figures. */
public final class WhatFlies {
    /** Names that letters use of much else: "the team on the ground", "a pass by the tower". */
    private static final Set<String> OF_MUCH = Set.of(
            "team",
            "display team",
            "formation",
            "pass by",
            "jet",
            "anything that passes by",
            "fly-past",
            "flypast",
            "flyby");

    private static final String SEVERAL =
            "(?:biplanes|monoplanes|jets|trainers|fighters|gliders|aeroplanes|airplanes|helicopters)\\b";

    /** "Formation (4 biplanes)", "a formation of three": of much else nobody says how many. */
    private static final Pattern HOW_MANY = Pattern.compile(
            "(?i)\\bformation(?: team)?\\s*(?:of\\s+|\\(\\s*)(?:\\d|two|three|four|five|six|seven|eight|nine)\\b|\\b(?:[3-9]|three|four|five|six|seven|nine)[- ]ship\\b"
                    + "|\\b(?:[3-9]|three|four|five|six|seven|eight|nine)(?: ?x)? (?:(?!seat)[\\p{L}-]+ ){0,2}"
                    + SEVERAL
                    + "|\\b(?:pair|duo) of (?:[\\p{L}-]+ ){0,2}" + SEVERAL);

    /** Whatever brings them up. */
    private static final Pattern JUMPERS =
            Pattern.compile("(?i)\\b(?:parachut(?:e|ist)s?|(?:sky ?div|jump)ers|para team|jump ?master|free ?fall)\\b");

    private static final String FORMATION = "formation";
    private static final String PARACHUTISTS = "parachutists";

    private final Map<String, Kind> byName = new LinkedHashMap<>();
    private final Pattern names;
    private final Optional<Kind> formation;
    private final Optional<Kind> parachutists;

    public WhatFlies(Kinds kinds) {
        formation = called(kinds, FORMATION);
        parachutists = called(kinds, PARACHUTISTS);
        for (Kind kind : kinds.all()) {
            kind.names().stream()
                    .map(name -> name.toLowerCase(Locale.ROOT))
                    .filter(name -> !OF_MUCH.contains(name))
                    .forEach(name -> byName.put(name, kind));
        }
        // The longest first: "jet trainer" is no jet.
        names = Pattern.compile(
                byName.keySet().stream()
                        .sorted(Comparator.comparingInt(String::length).reversed())
                        .map(Pattern::quote)
                        .collect(Collectors.joining("|", "(?<![\\p{L}-])(?:", ")s?(?![\\p{L}-])")),
                Pattern.CASE_INSENSITIVE);
    }

    /** The one kind that is named; empty if none is, or several are. */
    public Optional<Kind> in(FigureList list) {
        Set<Kind> named = new HashSet<>();
        if (parachutists.isPresent() && says(list, JUMPERS)) {
            return parachutists;
        }
        if (formation.isPresent() && says(list, HOW_MANY)) {
            return formation;
        }
        for (String note : list.notes()) {
            Matcher found = names.matcher(note);
            while (found.find()) {
                String name = found.group().toLowerCase(Locale.ROOT);
                Kind kind = byName.get(name);
                named.add(kind != null ? kind : byName.get(name.substring(0, name.length() - 1)));
            }
        }
        return named.size() == 1 ? named.stream().findFirst() : Optional.empty();
    }

    private static boolean says(FigureList list, Pattern what) {
        return list.notes().stream().anyMatch(note -> what.matcher(note).find());
    }

    private static Optional<Kind> called(Kinds kinds, String name) {
        return kinds.all().stream().filter(kind -> kind.names().contains(name)).findFirst();
    }
}
