package crowdline.practice;

import crowdline.practice.Change.Kind;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.Variant;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.show.figure.Figure;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/**
 * A flight of an act in which one figure is left out, put in, or has changed places with another, to be watched, and what it may
 * have been.
 *
 * @param flight what is flown
 * @param plan the figures as planned, by their names and in their order
 * @param choices sentences, of which one is true
 * @param right which of them, from 0
 */
public record WhatChanged(PracticeFlight flight, List<String> plan, List<String> choices, int right) {
    /** Flights that only circle and wait are passed over; so many are looked at. */
    private static final int FLIGHTS = 12;
    /** The family of figures that one aircraft alone does not fly. */
    private static final String OF_SEVERAL = "formation";

    public WhatChanged {
        plan = List.copyOf(plan);
        choices = List.copyOf(choices);
    }

    /**
     * One of an act; the same arguments give the same. It takes a moment.
     *
     * @throws CannotPractise if nothing is known of the act but its times, or no such flight was found
     */
    public static WhatChanged of(Show show, Catalogue catalogue, Act act, Variant variant, long seed)
            throws CannotPractise {
        PracticePilot pilot = new PracticePilot(show, catalogue);
        for (int i = 0; i < FLIGHTS; i++) {
            PracticeFlight flight = pilot.fly(act, variant, Level.TWO, seed * FLIGHTS + i);
            for (Change change : flight.changes()) {
                if (change.kind() == Kind.DROPPED || change.kind() == Kind.SWAPPED || change.kind() == Kind.UNPLANNED) {
                    return of(flight, change, planned(act, variant, catalogue), catalogue, new Random(seed));
                }
            }
        }
        throw new CannotPractise("No flight of \"" + act.title() + "\" was found in which one figure is changed.");
    }

    private static List<Figure> planned(Act act, Variant variant, Catalogue catalogue) {
        return act.inOrder(variant).stream()
                .filter(f -> !f.transit() && catalogue.find(f.figure()).isPresent())
                .toList();
    }

    private static WhatChanged of(
            PracticeFlight flight, Change change, List<Figure> planned, Catalogue catalogue, Random random) {
        List<String> plan =
                planned.stream().map(f -> flight.plannedName(f.id())).toList();
        String truth = sentence(change.kind(), change.name());
        List<String> choices = new ArrayList<>();
        choices.add(truth);
        anyOf(dropped(flight, change, planned), random).ifPresent(choices::add);
        anyOf(swapped(flight, change, planned), random).ifPresent(choices::add);
        anyOf(unplanned(change, plan, catalogue), random).ifPresent(choices::add);
        Collections.shuffle(choices, random);
        return new WhatChanged(flight, plan, choices, choices.indexOf(truth));
    }

    private static Optional<String> anyOf(List<String> sentences, Random random) {
        return sentences.isEmpty() ? Optional.empty() : Optional.of(sentences.get(random.nextInt(sentences.size())));
    }

    private static String sentence(Kind kind, String name) {
        return switch (kind) {
            case DROPPED -> PracticeWords.front(name) + " is left out";
            case SWAPPED -> PracticeWords.capital(name) + " change places";
            default -> PracticeWords.front(name) + " is flown, which is not in the plan";
        };
    }

    /** Figures that are flown, and so are not left out. */
    private static List<String> dropped(PracticeFlight flight, Change change, List<Figure> planned) {
        return planned.stream()
                .filter(f -> !change.figureIds().contains(f.id())
                        && flight.figure(f.id()).isPresent())
                .map(f -> sentence(Kind.DROPPED, flight.plannedName(f.id())))
                .toList();
    }

    /** Neighbours that are flown in their order. */
    private static List<String> swapped(PracticeFlight flight, Change change, List<Figure> planned) {
        List<String> sentences = new ArrayList<>();
        for (int i = 1; i < planned.size(); i++) {
            String first = planned.get(i - 1).id();
            String second = planned.get(i).id();
            boolean inOrder = flight.figure(first).isPresent()
                    && flight.figure(second).isPresent()
                    && !change.figureIds().contains(first)
                    && !change.figureIds().contains(second);
            if (inOrder) {
                sentences.add(sentence(
                        Kind.SWAPPED,
                        PracticeWords.the(flight.plannedName(first)) + " and "
                                + PracticeWords.the(flight.plannedName(second))));
            }
        }
        return sentences;
    }

    /** Figures of the catalogue that are neither planned nor flown. */
    private static List<String> unplanned(Change change, List<String> plan, Catalogue catalogue) {
        return catalogue.entries().stream()
                .filter(e -> !e.family().equals(OF_SEVERAL) && !e.elements().isEmpty())
                .map(CatalogueEntry::name)
                .filter(name ->
                        !name.equals(OtherOrder.TURN_BACK) && !plan.contains(name) && !name.equals(change.name()))
                .map(name -> sentence(Kind.UNPLANNED, name))
                .toList();
    }
}
