# What a person reads. Amount first, then how to measure, why, and what to mind.

# --- the dose ---
product = { $analysis }{ $form ->
    [powder] {" "}powder
    [liquid] {" "}liquid
   *[other] {""}
}
dose-amount = { $amount } { $unit ->
    [tsp] tsp
   *[other] { $unit }
} of { $product } in { $volume }
volume-litres = { $litres } l
volume-millilitres = { $millilitres } ml

measure-weigh = Weigh it on a { $step } g scale (within { $error } %).
measure-syringe = Take it with a { $step } ml syringe (within { $error } %).
measure-stock = Too little for a { $step } g scale (off by up to { $error } %). Dissolve { $product } g in water to make { $bottle } ml, and put { $use } ml of that in the can. The rest keeps { $days } days, cool, dark and labelled. Or mix { $batch } or more at once.
measure-stock-liquid = Too little for a { $step } ml syringe (off by up to { $error } %). Top { $product } ml up with water to { $bottle } ml, and put { $use } ml of that in the can. The rest keeps { $days } days, cool, dark and labelled. Or mix { $batch } or more at once.
measure-cross-check = Roughly { $spoons } level teaspoon of powder: only to catch a slip of the decimal.
measure-batch = Too little for your tools (off by up to { $error } %). Mix at least { $batch } and keep what is left over for the next watering.
measure-spoon = A level spoon is a rough measure. Better: weigh one spoonful, and send the label rate in grams.

makes = Makes { $elements } mg/l{ $ec ->
    [none] .
   *[other] ; adds EC { $ec } mS/cm to your water.
}
chain = Why: { $steps } = { $strength } of full strength.

# --- the steps ---
why-full-assumed = full strength taken as 200 mg/l N (no label rate given)
why-full-product = full strength by the product on your shelf
why-full-target = the concentration you asked for
why-form-weighed = weighed, as powder or liquid was not said
why-density-assumed = 1.2 kg a litre taken for the liquid
why-measure-us = US measures taken
why-measure-imperial = imperial measures taken
why-ec-water_unknown = taken as what the feed adds, as your water's own EC was not said
why-strength-asked = { $factor ->
    [full] full strength
   *[other] { $factor }
} asked
why-strength-target = nothing taken off it
why-strength-default = { $factor }, as no strength or rhythm was said
why-strength-every_watering = { $factor } for every watering
why-strength-weekly = { $factor } for weekly feeding
why-strength-fortnightly = { $factor } for feeding every two weeks
why-strength-monthly = { $factor } for monthly feeding
why-season-winter = × { $factor } winter
why-medium-sphagnum = × { $factor } sphagnum holds salts
why-medium-clay_pellets = × { $factor } clay pellets hold salts
why-seedling = × { $factor } seedlings
why-ceiling-label = cut to the label rate
why-ceiling-hungry = cut to 200 mg/l N, the most for hungry plants
why-ceiling-moderate = cut to 125 mg/l N, the most for this kind of plant
why-ceiling-sensitive = cut to a quarter of the label and 50 mg/l N, the most for sensitive roots
why-rest-genus = { $plants } rests now
why-rest-growth = a resting plant takes no feed

# --- no feed ---
no-feed-genus = No feed: clear water only, and little of it. { $plants } { $count ->
    [one] rests
   *[other] rest
} in this season.
no-feed-growth = No feed: clear water only, and little of it. A resting plant takes nothing up, and what it leaves burns the roots.
no-feed-until = Start again when new growth or new roots show.
no-feed-others = For { $plants } alone: { $amount } { $unit } in { $volume }.

# --- cautions ---
caution-plant-unknown = I do not know the plant: start lower, and tell me its name.
caution-types-rest = Some kinds of this genus rest now and take no feed: send the species, like Dendrobium nobile.
caution-wet-roots-first = Wet the roots with clear water first.
caution-softened-water = Softened water is full of sodium: do not use it on orchids. Take the tap before the softener, or rain.
caution-spoon-is-rough = A spoonful can weigh twice as much as another: level it, and rather less.
caution-sensitive-roots = These roots burn easily: rather weaker than stronger.
caution-winter-half = In winter half of this is usual, unless it is growing.
caution-slow-growth = It grows slowly: feed less, or every other time.
caution-hard-water = Your water is hard and brings salts of its own: flush more often, or mix it with rain.
caution-no-calcium-in-water = This water brings no calcium or magnesium, and your label shows none: use a feed that has them, or some tap water.
caution-clear-water-monthly = Once a month, clear water only, until it runs through freely.
caution-too-much-signs = Brown root tips, dying leaf tips or a crust on the medium mean too much: rinse with clear water and pause.
caution-calcium-apart = Never keep a calcium feed in one concentrate with phosphate or sulphate.
caution-no-dust = Wear gloves, and do not breathe the dust.
caution-no-splash = Wear gloves, and keep it out of your eyes.
caution-children-and-pets = Keep concentrates away from children and pets, never in a drinking bottle.
caution-never-mix-concentrates = Never pour two concentrates together.
caution-label-first = The label and your local rules come first.
caution-not-for-food = Not for plants you eat.
caution-not-down-the-drain = Leftover feed goes to other plants, not down the drain or into a pond.
caution-ask-a-society = If the whole collection is failing, show it to a local orchid society or extension service.
caution-clear-water-only = Water only when it shrivels or the medium is dry through.

# --- what was made of the words ---
read-as = Read { $pairs }.
read-as-pair = “{ $text }” as { $meaning }
not-used = Not understood, not used: { $texts }.
not-used-one = “{ $text }”
not-used-maybe = “{ $text }” (did you mean { $suggestions }?)

# --- questions ---
ask-volume = How many litres do you want to mix?
ask-product = What does the label say? Send the three numbers, like 20-20-20.
ask-product-with-rate = What are the three numbers on the label (like 20-20-20)? Without them I cannot tell whether the label rate is too much for the plant.
ask-volume-and-product = How many litres, and what are the three numbers on the label? Like: 5 litres, 20-20-20 powder.
ask-label-rate = There is hardly any nitrogen in it, so I need the rate on the label. Send it like: label says 1 g per litre.
ask-ec-reached = Your water alone has that EC already. Send a higher EC, or use rain water.
ask-form-unit = The label rate is in millilitres but you wrote powder. Which is it? Send the rate in grams, or write liquid.
ask-several = You wrote { $texts }. Which one is right? Send the whole line again with only one.
ask-range = “{ $texts }” leaves it open. Send one figure.
ask-negation = You wrote “{ $texts }”. Tell me what it is instead, not what it is not.
ask-ambiguous_number = Is { $texts } a decimal or thousands? Send it without the comma or point, like 1500 ml or 1.5 l.
ask-element = { $texts } of what? Send it like 100 ppm N for nitrogen.
ask-basis = On “{ $texts }”: are these the numbers on the label (N, P2O5, K2O)? Then send them like 20-20-20.
ask-ec_unit = “{ $texts }” is not a likely conductivity. Send it with its unit, like EC 0.8 mS/cm or 800 µS/cm.
ask-hardness_unit = In which unit is “{ $texts }”? Send it like 12 °dH or 200 mg/l CaCO3.
ask-lone_number = { $texts } what? Send it with its unit.
ask-product_of_numbers = “{ $texts }” could mean two things. Send the total, like 6 litres.

# --- refusals ---
refuse-negative = “{ $text }” is below nothing. Send an amount above zero, like 5 litres.
refuse-division_by_zero = “{ $text }” divides by zero. Send a fraction like 1/4.
refuse-not_a_number = “{ $text }” is not a number I can use. Send it like 5 litres.
refuse-too_long = That is very long. Send one watering in one short line, like: 5 litres, 20-20-20 powder, quarter strength.
refuse-hidden_characters = There are hidden characters in that line that could turn figures round. Type it again by hand.
refuse-volume-zero = That is next to no water. Send how much you want to mix, like 5 litres.
refuse-volume-absurd = { $volume } is more than any home needs. Send litres for one watering, like 5 litres.
refuse-analysis-over = { $analysis } adds up to more than 100 %. Look at the label again and send the three numbers, like 20-20-20.
refuse-analysis-zero = 0-0-0 holds no nutrients to feed. Send the three numbers on the label, like 20-20-20.
refuse-strength-zero = At that strength it is clear water. Send a strength like quarter, or leave it out.
refuse-target-zero = Nothing to feed at that figure. Send one above zero, like 100 ppm N.
refuse-label-absurd = { $rate } { $unit } in each litre cannot be a feeding rate. Look at the label again and send it like: label says 1 g per litre.
refuse-granules = Granules and slow-release products are never dissolved for watering: they would go on releasing and burn the roots. Lay the amount the label gives for the pot on the medium, if it allows orchids at all, or send me a soluble powder or a liquid.

# --- help ---
help = I work out how much feed goes into your water. Send one line, like:
    5 litres, 20-20-20 powder, sphagnum, winter, quarter strength
    Add what you know: the plant, the label rate, your water. The order does not matter.
apology = Sorry, that is my fault: something went wrong and I have noted it. Please send it again in a moment.
missing-hint = A better answer needs { $items }. “more” lists all cautions, “why” the steps.
hint-plant = the plant
hint-medium = the medium
hint-label = the label rate
hint-water = your water
