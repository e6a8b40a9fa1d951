package crowdline.patter;

/** A remark in a form, as the next thing said. */
record Step(Item item, Choice choice) {}
