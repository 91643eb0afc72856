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
volume-own = { $amount } { $unit ->
    [us_gallon] US gal
    [us_quart] US qt
    [us_fluid_ounce] US fl oz
    [imperial_gallon] imp gal
    [imperial_pint] imp pt
   *[imperial_fluid_ounce] imp fl oz
} ({ $metric })

measure-weigh = Weigh it on a { $step } g scale (within { $error } %).
measure-syringe = Take it with a { $step } ml syringe (within { $error } %).
measure-stock = Dissolve { $product } g in water to make { $bottle } ml, and put { $use } ml of that in the can: a { $step } g scale { $error ->
    [none] cannot weigh so little.
   *[other] is off by up to { $error } % here.
} Keeps { $days } days, cool, dark, labelled. Or mix { $batch } or more.
measure-stock-liquid = Top { $product } ml up with water to { $bottle } ml, and put { $use } ml of that in the can: a { $step } ml syringe { $error ->
    [none] cannot measure so little.
   *[other] is off by up to { $error } % here.
} Keeps { $days } days, cool, dark, labelled. Or mix { $batch } or more.
measure-cross-check = Roughly { $spoons } level { $many ->
    [yes] teaspoons
   *[no] teaspoon
} of powder: only to catch a slip of the decimal.
measure-batch = Too little for your tools{ $error ->
    [none] .
   *[other] {" "}(off by up to { $error } %).
} Mix at least { $batch } and keep what is left over for the next watering.
measure-spoon-stock = Stir { $spoons } level teaspoon into water to make { $bottle } ml, and put { $use } ml of that in the can. Keeps { $days } days, cool, dark, labelled. Better: weigh one spoonful, and send the label rate in grams.
measure-spoon = A level spoon is a rough measure. Better: weigh one spoonful, and send the label rate in grams.

makes = Makes { $elements } mg/l{ $ec ->
    [none] .
   *[other] ; adds EC { $ec } mS/cm to your water.
}
chain-target = Why: { $steps }.
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
why-ec-water_known = the EC { $own } of your water taken off the { $wanted }
why-ec-water_hardness = your water taken as { $middle } mS/cm ({ $low } to { $high } by its hardness; tell me its EC for a better figure)
why-strength-asked = { $factor ->
    [full] full strength
   *[other] { $factor }
} asked
why-strength-target = not lessened by season or medium
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
clear-only = No feed: { $volume } of clear water only{ $plants ->
    [none] .
   *[other] , for { $plants }.
}
clear-how = Pour until it runs out below, wet the medium all through, and let it drain. Feed in it after all? Send “feed” with the litres.
clear-flush = { $enough ->
    [yes] That is enough for the monthly flush too (about { $volume }): pour it through slowly, in two goes.
   *[no] The monthly flush takes more: about { $volume }, twice the pots, poured through slowly.
}
no-feed-growth = No feed: clear water only, and little of it. A resting plant takes nothing up, and what it leaves burns the roots.
no-feed-until = Start again when new growth or new roots show.
no-feed-months = Rest by the calendar: { $begin } to { $end }. Start again after that, with new growth or new roots.
no-feed-others = For { $plants } alone: { $amount } { $unit } in { $volume }.

# --- cautions ---
caution-plant-unknown = I do not know the plant: start lower, and tell me its name.
caution-types-rest = Some kinds of this genus rest now and take no feed: send the species, like Dendrobium nobile.
caution-ailing = An ailing plant takes no feed: clear water only. Send what you see alone, like “root rot on my phal”, for a plan.
caution-wet-roots-first = Wet the roots with clear water first.
caution-softened-water = Softened water is full of sodium: do not use it on orchids. Take the tap before the softener, or rain.
caution-water-over-limit = { $alone ->
    [yes] Not in this water: its EC { $own } alone is over the { $most } mS/cm that these plants bear.
   *[no] Not in this water alone: with its EC { $own } this comes to { $total }, and these plants bear { $most } mS/cm.
} { $litres ->
    [none] Take rain or reverse osmosis water.
   *[other] Take rain or reverse osmosis water, with at most { $litres } of yours in { $volume }.
}
caution-spoon-is-rough = A spoonful can weigh twice as much as another: level it, and rather less.
caution-sensitive-roots = These roots burn easily: rather weaker than stronger.
caution-winter-half = In winter half of this is usual, unless it is growing.
caution-slow-growth = It grows slowly: feed less, or every other time.
caution-hard-water = Your water is hard and brings salts of its own: flush more often, or mix it with rain.
caution-salty-water = Your water alone is saltier than these plants bear: mix it with rain, and flush more often.
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
meant-strength = strength
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
ask-element-none = This label shows no { $element }, so I cannot dose by it. Name a feed that does, or send a target for nitrogen, like: 50 ppm N.
ask-ec-perhaps = By its hardness your water alone may have that EC already ({ $low } to { $high } mS/cm). Tell me its own EC, like: my tap is 0.5 mS. Or send a higher one, or use rain water.
ask-ec-reached = Your water alone has that EC already. Send a higher EC, or use rain water.
ask-form-unit = The label rate is in millilitres but you wrote powder. Which is it? Send the rate in grams, or write liquid.
ask-several-analysis = { $texts } are two feeds, and I work out one at a time. Send the whole line again with only one.
ask-several = You wrote { $texts }. Which one is right? Send the whole line again with only one.
ask-range = “{ $texts }” leaves it open. Send one figure.
ask-negation = You wrote “{ $texts }”. Tell me what it is instead, not what it is not.
ask-ambiguous_number = Is { $texts } a decimal or thousands? Send it without the comma or point, like 1500 ml or 1.5 l.
ask-element = { $texts } of what? Send it like 100 ppm N for nitrogen; or, of the water, its hardness or EC.
ask-ec_unit = “{ $texts }” is not a likely conductivity. Send it with its unit, like EC 0.8 mS/cm or 800 µS/cm.
ask-hardness_unit = In which unit is “{ $texts }”? Send it like 12 °dH or 200 mg/l CaCO3.
ask-lone_number = { $texts } what? Send it with its unit.
ask-product_of_numbers = “{ $texts }” could mean two things. Send the total, like 6 litres.
ask-loose_rate = How much is “{ $texts }”? Measure it once and send the rate like: label says 2 ml per litre. Or leave it out.

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
refuse-granules = Granules and slow-release feed are never dissolved for watering: they would burn the roots. Lay the label's amount on the medium, if it allows orchids, or send me a soluble powder or a liquid.

# --- help ---
help = I work out how much feed goes into your water. Send one line, like:
    5 litres, 20-20-20 powder, sphagnum, winter, quarter strength
    Add what you know: the plant, the label rate, your water. The order does not matter.
    Also: my meter says 0.9, 20-20-20 · is 14 dH too hard for phals? · mix tap and RO to 6 dH · stock 1:100 of 20-20-20 · brown root tips and white crust
needs-chat = For that I would have to remember your plants, feeds and water, and here I remember nothing. Send it in a chat.
needs-one-line = Here I remember nothing: send all you see in one line, or ask in a chat.
apology = Sorry, that is my fault: something went wrong and I have noted it. Please send it again in a moment.
missing-hint = A better answer needs { $items }. “more” lists all cautions, “why” the steps.
hint-plant = the plant
hint-medium = the medium
hint-label = the label rate
hint-water = your water

# --- plants on record ---
plant-kind = { $traits } { $kind }
plant-label = { $count ->
    [1] { $kind ->
        [none] one unnamed plant
       *[other] { $kind }
    }
   *[other] { $count } { $kind ->
        [none] plants
       *[other] { $kind }
    }
}
plant-named-several = { $name } × { $count }
pot = { $cm } cm pot
pot-inch = { $inches } inch pot ({ $cm } cm)
medium-bark = bark
medium-sphagnum = sphagnum
medium-clay_pellets = clay pellets
medium-coconut = coconut
medium-rockwool = rockwool
medium-perlite = perlite
medium-stone = stone
medium-mounted = mounted
medium-mixed = mix
growth-growing = growing
growth-new_roots = new roots
growth-new_leaves = new leaves
growth-new_pseudobulbs = new pseudobulbs
growth-flowering = in spike or flower
growth-slow = growing slowly
growth-resting = resting
growth-seedling = seedling
plants-more = { $count } more
plants-added = On record: { $plants }.
plants-unknown = I do not know { $items } yet; send it any time, like: { $name } is in bark, 12 cm pot.
unknown-genus = the kind of orchid
unknown-medium = the medium
unknown-pot = the pot size
plants-first-hint = Now add what you feed (my powder is 20-20-20, label 1 g per litre), and ask: what's on today.
plants-first-plan = Ask what's on today, or send 2 l for a dose.
plants-corrected = { $plants }.
plants-water = { $plants }: { $volume } at a watering{ $count ->
    [1] .
   *[other] , each.
}
plants-renamed = { $before } is now { $name }.
plants-moved = { $plants }: now at { $place }.
plants-repotted = Repotted { $day }: { $plants }{ $facts ->
    [none] .
   *[other] , { $facts }.
}
plants-repotted-note = No feed for three weeks or until new roots show.
plants-growth = { $plants }: { $growth }.
plants-growth-rest = No feed while it rests: clear water, and little of it.
plants-fewer = { $gone } { $kind ->
    [none] {""}
   *[other] { $kind }
} gone, { $left } left.
plants-lost = Taken off your list: { $plants }. What it got stays in the log.
plants-meanwhile = Somebody else had changed that a moment before: there were { $held } on record.
who-rests = Resting { $when ->
    [now] now
    [month] in { $month }
    [day] { $month }
    [winter] in winter
    [spring] in spring
    [summer] in summer
    [autumn] in autumn
   *[then] then
}: { $plants }. Clear water only, and little of it.
who-rests-none = None of yours rests { $when ->
    [now] now
    [month] in { $month }
    [day] { $month }
    [winter] in winter
    [spring] in spring
    [summer] in summer
    [autumn] in autumn
   *[then] then
}.
who-flush = Due for a flush: { $plants }. “how do I flush” and a name tells how much water.
who-flush-none = Nobody is due for a flush today.
ask-add-listed = Shall I put on record: { $plants }? If you want a dose for them, say how many litres.
plants-not-added = Nothing was put on record.
plants-none = No plants on record yet. Send them like: add 3 phals in bark, 12 cm pots, kitchen.
plants-none-group = This group has no plants on record. For your own write to me in private; for the group's: { "/dose" } add 3 phals in bark, 12 cm pots, greenhouse.
plants-count = { $count } { $count ->
    [one] plant
   *[other] plants
}
plants-place = { $place ->
    [none] Somewhere:
   *[other] { $place }:
}
ask-which-plant = Which one of these { $count }? Send its number, or “all”.
ask-which-some = Which { $some ->
    [one] one
   *[other] { $some }
} of these { $count }? Send { $some ->
    [one] its number.
   *[other] a number or names, or several numbers, like: 1 and 2.
}
ask-which-plants = Which plants? Send a name, a kind or a place, like: flushed all phals.
ask-no-plants-yet = No plants are on record yet. Send them like: add 3 phals in bark, 12 cm pots, kitchen.
ask-part-of = { $plants } are one entry: nothing was written down. Leave the number out for all; or put { $fewer } of them apart first, like: move { $fewer } { $kind } to the balcony.
ask-gone = { $plants } { $count ->
    [one] is
   *[other] are
} off your list ({ $day }): nothing was done. Just removed? Send: undo. Otherwise put it back, like: add { $kind ->
    [none] plant
   *[other] { $kind }
} called { $name }.
ask-had = Nothing was put on record. If you still have them, send: add { $plants }. If they were on the list, send like: 2 vandas died.
ask-names-count = { $count } { $count ->
    [one] plant
   *[other] plants
}, and more names than that: { $names }. Nothing was put on record; send a number and names that fit, like: add 2 phals called Ruby and Max.
ask-further-named = On record already, without a name: { $known }. If { $name } is that one, send: the { $kind } is called { $name }. Is it a further one, say yes.
ask-further = On record already: { $known }. Shall I add { $plants } as further ones? If those are all you have, say no.
ask-fewer-than = On record: { $plants }, which is { $gone } more than { $count }. Nothing was changed; send what became of them, like: { $gone } { $kind } died.
plants-in-all = { $count } { $kind } in all.
ask-lost-apart = Nothing was changed. Send one kind at a time, like: 2 phals died.
ask-more-than = On record: { $plants }, fewer than { $count }. Nothing was changed; if all are gone, send: { $held } { $kind } died.
plants-split = { $left ->
    [one] The other { $kind } stays as it was.
   *[other] The other { $left } { $kind } stay as they were.
}
ask-name-one = Without a name on record: { $known }. Nothing was changed; name one at a time, like: call the { $kind } on the balcony { $name }.
ask-them = The plant you spoke of is not on record. Send its name or kind, or add it first. On record: { $known }.
dose-for-nobody = No “{ $meant }” is on record. On record: { $known }. { $some ->
    [none] This is for any orchid; if you know the kind, add it first:
   *[other] This is for { $some } alone:
}
ask-no-such = “{ $meant }” is no feed of yours: no amount of it. On your shelf: { $feeds }. Send one of these, or its label: { $meant } is 20-20-20 powder, 1 g per litre.
ask-not-on-record = I have no “{ $meant }” on record{ $known ->
    [none] .
   *[other] . On record: { $known }.
} Send one of these, or add it first.

# --- products on record ---
n-nitrate = { $percent } % nitrate N
n-ammonium = { $percent } % ammonium N
n-urea = { $percent } % urea N
label-rate = label { $rate } { $unit } per litre
density = { $density } kg/l
price = { $currency ->
    [none] { $price }
   *[other] { $price } { $currency }
}{ $pack ->
    [none] {""}
   *[other] {" "}for { $pack }
}
product-added = On your shelf: { $product }.
product-no-rate = No label rate yet: full strength is taken as 200 mg/l N. Better send it, like: label 1 g per litre.
product-use-it = To make it the usual one, send: use { $name } from now on.
product-name-it = To give it a name, send: call it blue tub
ask-rate-or-mix = Is that what its label says, or what you mixed? Send: { $name }, label { $rate } { $unit } per litre; or ask: is that too much? with the whole amount.
ask-name-of-what = What shall be called { $name }? Send it like: call the vanda { $name }
ask-which-feed = Which feed is that said of? Send one at a time, like: { $name } costs 12 € for 500 g.
ask-unshelved = { $what } is not on your shelf: no amount of it, and nothing is noted. Put it there with the figures of its label, like: magnesium sulfate 9.8 % Mg powder, label 0.3 g per litre, call it epsom
ask-ceased = { $name } stays on your shelf. To take it off, send: remove { $name }. To use another: “use NAME from now on”.
says-remove = remove { $name }
ask-which-product = { $several ->
    [yes] Which one? Several fit: { $products }. Send its numbers or its name.
   *[no] None of your feeds is that. On your shelf: { $products }.
}
newest-taken = “The new one”: { $name }, put on record last.
can-taken = For all that your can holds: { $volume }.
ask-can = How much does it hold? Send it like: my can holds 5 l, and it is kept.
one-feed = Reckoned for { $name } alone, not for { $others }: each at its full dose is too much together. May they meet? Send: { $name } and { $others } in one bottle?
product-changed = Changed: { $product }.
product-removed = { $name } is off your shelf.
product-default = { $name } is what you mean from now on, unless you name another.
product-is-default = , the usual one
products-none = Nothing on your shelf yet. Send it like: my powder is 20-20-20, label 1 g per litre, call it blue tub.
products-head = On your shelf:
ask-product-numbers = What are the three numbers on its label? Send the whole line with them, like: my powder is 20-20-20, label 1 g per litre.
lack-line = { $name }: { $macro ->
    [none] all macro elements on the label
   *[other] no { $macro } on the label
}; { $micro ->
    [none] all micro elements too.
   *[other] micro elements not shown: { $micro }.
}
lack-line-traces = { $name }: { $macro ->
    [none] all macro elements on the label
   *[other] no { $macro } on the label
}; trace elements without figures.
trace-elements = trace elements
lack-note = I only know what you told me of the label. Calcium and magnesium may come with your tap water; rain and reverse osmosis bring none.
choice-none = Nothing on your shelf yet, so there is nothing to choose from. A balanced feed with macro and micro elements does for most.
choice-best = Use { $name }.
choice-only = It is the only one on your shelf.
choice-close = The others would do nearly as well.

# --- water, kit, home ---
water-tap = tap water
water-rain = rain water
water-reverse_osmosis = reverse osmosis water
water-distilled = distilled water
water-softened = softened water
water-well = well water
hardness = { $german } °dH = { $caco3 } mg/l CaCO3
ec = EC { $ec } mS/cm
alkalinity = alkalinity { $caco3 } mg/l CaCO3
water-recorded = On record: { $water }.
water-used-now = From now on I take it for every dose where no other is named.
water-used-still = For doses I take { $used }. To change that, send: I use { $water } now.
water-for = { $plants }: { $water } from now on.
kit-scale = a scale that shows { $step } g
kit-syringe = a syringe that shows { $step } ml
kit-can = a can of { $volume }
kit-units-us = US measures
kit-units-imperial = imperial measures
kit-units-metric = metric measures
kit-spoons = spoons only
kit-recorded = On record: { $kit }.
kit-line = Kit: { $kit }.
refuse-step = { $step } g is no step of a scale that could help here. Send it like: my scale shows 0.1 g.
ask-syringe-step = What is its smallest mark? Send it like: my syringe shows 0.1 ml.
ask-remains = I keep no count of what is left. For a dose send the litres, like: 5 l; once it is used up, the name, like: blue tub is empty.
refuse-can = A can holds between 0.1 and { $most } litres. Send it like: my can holds 5 l.
home-recorded = { $place }{ $country ->
    [none] {""}
   *[other] , { $country }
}: { $zone }, { $side ->
    [south] southern hemisphere
   *[north] northern hemisphere
}.
home-others = Not { $others }? Then send the country with it.
home-besides = Not used: { $texts }. Send it as a line of its own.
home-south = Southern hemisphere: I turn the seasons round.
home-north = Northern hemisphere.
home-line = Home: { $place ->
    [none] {""}
   *[other] { $place }, {""}
}{ $zone ->
    [none] {""}
   *[other] { $zone }, {""}
}{ $side ->
    [south] southern hemisphere
   *[north] northern hemisphere
}.
ask-home = I do not know “{ $text }”. Send a larger town near you, with the country, like: I live in Porto, Portugal.
settings-kept = Also on record: { $plants ->
    [one] 1 plant
   *[other] { $plants } plants
} (send: my plants), { $feeds ->
    [0] no feed yet
    [one] 1 feed
   *[other] { $feeds } feeds
} (send: my feeds); and see: my reminders.
settings-none = Nothing on record of your water and kit. Send it like: my tap is 14 dH; my scale shows 0.1 g; my can holds 5 l; I live in Porto.

# --- the log ---
share-full = full
# Where a figure is from: what is no citation. Citations stay in their own language.
source-practice = common practice, no source
source-ours = ours
source-told = your message
source-direction = direction common practice, factor ours
source-shelf = your shelf
source-label = mass balance on the label
source-cited = { $source }
# How days are written: letters as in CLDR date patterns.
pattern-day = E d MMM
pattern-date = d MMM
pattern-date-year = d MMM y
pattern-date-long = d MMMM
day-today = today
day-yesterday = yesterday
day-tomorrow = tomorrow
logged-fed = Fed { $day }: { $plants }{ $facts ->
    [none] .
   *[other] {" "}({ $facts }).
}
logged-clear = Clear water { $day }: { $plants }.
logged-flush = Flushed { $day }: { $plants }.
logged-reading = Runoff { $day }: { $plants }, EC { $ec } mS/cm.
reading-under = That is under the limit of { $limit } mS/cm.
reading-over = { $plants ->
    [none] That is over its limit of { $limit } mS/cm: flush it now, and no feed until it reads less.
   *[other] Over their limit (mS/cm): { $plants }. Flush now, and no feed until it reads less.
}
reading-no-plant = EC { $ec } mS/cm out of a pot is { $over ->
    [yes] over the limit of { $limit } (ours): pour twice the pot of clear water through, and no feed until it reads less.
   *[no] under the limit of { $limit } (ours).
} Not written down, as I know no plants of yours. Send them like: add 3 phals in bark, 12 cm pots.
logged-resting = { $plants } rests: no feed next time, clear water only.
amended = Put right. { $entry } Before: { $before }
amended-undone = As before: { $entry }
amended-same = It stands so already. { $entry }
ask-amend = What was wrong? { $entry } Send it like: that was Ruby; or: it was yesterday; or: undo.
ask-amend-undo = To put that right, send: undo; and then the line anew.
ask-undo-last = The last entry is another: { $what }{ $plants ->
    [none] {""}
   *[other] {" "}({ $plants })
}. “undo” takes that one back, and then the one before.
ask-wrong = What was wrong? Send the line as it should be; “undo” takes the last entry back.
ask-two-days = Two days at once. Send them one by one, like: fed Ruby yesterday.
ask-two-things = Two things at once, and I cannot tell which plants got which. Send them one by one, like: fed the phals.
not-changed = Then nothing is changed. What was changed by mistake goes back with “undo”.
not-yours = That sounds like somebody else’s, so nothing is noted. If it is yours, say it without the other person.
not-your-water = That sounds like somebody else’s water, or like years ago: nothing is noted. Yours now, like: my tap is 14 dH
not-used-now = Nothing is changed. To take a feed off your shelf, send: remove, and its name.
not-told-doubt = Nothing is written down while it is not certain. If it was so, send { $verb ->
    [clear] it like: watered Ruby
    [flush] it like: flushed Ruby
    [repot] it like: repotted Ruby
   *[fed] it like: fed Ruby
}.
feed-pause = I keep no pause of feed by itself. Send “Ruby is resting”, and the plan gives clear water only, until you send “Ruby has new roots” or “Ruby is growing”.
not-from-today = Just today: nothing on record is changed. For a dose with that water say it in the line, like: 2 l with rain water.
not-told = Nothing is written down yet. When it is done, send { $verb ->
    [fed] it like: fed Ruby
    [clear] it like: watered Ruby
    [flush] it like: flushed Ruby
    [repot] it like: repotted Ruby
    [move] it like: moved Ruby to the balcony
    [lose] it like: Ruby died; if it only ails, what you see
   *[other] it in one line
}.
logged-twice = Twice that day now: { $plants }. Was it one feeding, told twice? Send: undo.
not-given = Then nothing is written down: I log only what was given. What I logged by mistake goes with “undo”.
ask-all-or-some = All but { $names }, or only { $names }? Nothing is written down yet; send the line again with one of these.
ask-runoff = What did the meter show? Send it like: runoff of Ruby 1.6 mS.
undone = Taken back: { $what }{ $plants ->
    [none] {""}
   *[other] {" "}({ $plants })
}{ $whose ->
    [none] .
   *[other] , said by { $whose }.
}
undo-nothing = Nothing left to take back.
undo-nothing-own = Nothing of yours is left to take back. What others put on record they can take back, or an administrator.
refuse-undo-others-since = Somebody else has put more on record of the same since. An administrator can take back the last entries one by one.
diary-you = you
diary-member = a member
all-plants = all plants
event-fed = fed
event-clear = clear water
event-flush = flush
event-reading = runoff measured
event-pause = the pause without feed
event-overfed = too much feed
event-rescue = judged ill: { $cause ->
    [root-rot] root rot
    [salt-burn] salt burn
    [thirst] thirst
    [cold] cold
    [old-age] old age
   *[unclear] not clear of what
}
event-added = added
event-repot = repotted
event-growth = growth noted
event-moved = moved
event-renamed = renamed
event-water = water set
event-corrected = corrected
event-lost = lost
event-product = shelf changed
event-water_source = water changed
event-settings = settings changed
history-head = { $plants ->
    [none] The log:
   *[other] { $plants }:
}
history-none = { $plants ->
    [none] Nothing in the log for that time.
   *[other] Nothing in the log of { $plants } for that time.
}
history-more = ({ $count } earlier ones are in the export.)

# --- the plan of a day ---
due-feed = feed
due-clear = clear water
due-flush = flush
due-nothing = nothing
plan-head = Plan for { $day }: { $counts }.
plan-count-feed = { $count } to feed
plan-count-clear = { $count } clear water
plan-count-flush = { $count } to flush
plan-count-nothing = { $count } nothing
plan-left-over = { $volume } are left over: pour them onto other plants that may have feed.
plan-no-plants = No plants on record, so no plan yet. Send them like: add 3 phals in bark, 12 cm pots, kitchen.
plan-no-product = No product on your shelf, so no amounts. Send it like: my powder is 20-20-20, label 1 g per litre.
plan-can-assumed = For a { $volume } can; { $who ->
    [member] an administrator can send the group's, like: our can holds 8 l.
    [administrator] send the group's, like: our can holds 8 l.
   *[own] send yours, like: my can holds 8 l.
}
plan-same-plants = the same plants
plan-wet-first = Wet the roots with clear water before any feed.
plan-done-hint = Send “done” when all is watered, or “done 1” for a part.
plan-flush = Flush{ $water ->
    [none] {""}
   *[other] {" "}with { $water }
} until { $volume } ran through, in two or three goes: { $plants }.
plan-clear = Clear { $water ->
    [none] water
   *[other] { $water }
}, { $volume }: { $plants }.
plan-feed = Give { $volume } at { $strength }: { $plants }{ $of ->
    [1] .
   *[other] , can { $can } of { $of }.
}
plan-too-little = Clear water, { $volume }: { $plants }. Its feed would be too little to measure.
plan-feed-no-product = Feed, { $volume }{ $water ->
    [none] {""}
   *[other] {" "}with { $water }
}: { $plants }.
plan-mix = { $amount } { $unit } { $name }, fill up to { $to }{ $water ->
    [none] {""}
   *[other] {" "}with { $water }
}.
plan-mix-stock = { $amount } ml of that stock ({ $holds } { $unit } { $name }), fill up to { $to }{ $water ->
    [none] {""}
   *[other] {" "}with { $water }
}.
plan-stock = Too little to measure at once: first dissolve { $product } { $unit } { $name } to { $bottle } ml.
plan-too-coarse = Your measure ({ $step } { $unit } steps) is too coarse for so little: the strengths are rough.
plan-top-up = Top up with { $water ->
    [none] clear water
   *[other] { $water }
} to { $to }.
plan-pour-off = Pour { $volume } away onto other plants.
plan-again = Next at the next watering, once the medium is nearly dry: ask then what is on, or send: plan tomorrow.
plan-nothing = Nothing: { $plants }.
done-logged = In the log: { $what }.
done-fed = fed { $plants }
done-feed = fed { $plants }
done-clear = clear water for { $plants }
done-flush = flushed { $plants }
done-left = { $count } { $count ->
    [one] entry
   *[other] entries
} of the plan still open.
done-nothing = That is in the log already.
ask-no-plan = There is no plan to tick off. Send: what's on today.
ask-plan-old = The last plan was for { $day }. Send: what's on today, or say what you gave, like: fed all phals.
ask-plan-ahead = That plan is for { $day }. Send “done” on the day, or: what's on today.
ask-plan-step = The plan has { $count } parts. Send “done”, or “done 1”.

# --- follow-ups and what is on record ---
on-record = { $whose ->
    [group] From the group's records
   *[own] From your records
}: { $items }.
on-record-asleep = Left out, resting: { $plants }.
on-record-rate = You said { $rate } { $unit } per litre; the label on your shelf says less, so I kept to that. If the label is new, send: { $name } label { $rate } { $unit } per litre.
on-record-volume = { $volume } is what these pots take, roughly.
on-record-differ = They differ, so the weakest of their doses was taken; “plan” gives each its own.
on-record-spoons = You said spoons only: they are too coarse for this. Take a small syringe from a pharmacy, or a scale that shows tenths of a gram; until then rather less than more.
on-record-plants = your { $count } plants
on-record-deciding = { $plants } ({ $plant } bears the least and decides)
follow-up-more = That is { $times } times the dose before. For half of that one send: half that.
follow-up-strength-stays = Still { $share }, as you asked. For another strength send it, like: half.
ask-no-last = There is no dose to go on from. Send one line, like: 5 litres, 20-20-20 powder, quarter strength.
refuse-overtaken = I worked out another dose after that one, and go on only from the newest. Send one whole line, like: 5 litres, 20-20-20 powder, quarter strength.
ask-follow-up = What shall I change? Send it like: make it 3 litres; or: and for the masdevallias.
question-lapsed = That question of mine has lapsed: nothing was changed. Send the line again that it was about.
question-left = All right, we leave it at that. Nothing was changed.
nothing-asked = I had asked nothing. Send one line, like: 5 litres, 20-20-20 powder, quarter strength.
help-lost = That I did not understand: nothing was changed.
tell-water = Water when the medium is nearly dry: lift the pot, light means dry. In bark that is often once a week in summer and less in winter; moss stays wet longer. I plan feed and salts, not thirst (common practice, no source).
tell-need = They live long without, but grow and flower better with a little while they grow: a quarter of the label rate at every watering. Too much harms more than none (common practice, no source).
tell-winter = What goes on growing in winter gets half of its usual feed, what rests gets none: clear water, and less of it. From spring, when new growth or roots show, as before (common practice, no source).
tell-winter-half = Yes: in winter half of the usual amount. The doses I give for winter have that half in them: do not halve again. At rest nothing (common practice, no source).
tell-which-water = Rain or reverse-osmosis water, or tap water that is not hard; never water from a salt softener. Rain and osmosis water bring no calcium or magnesium: the feed has to. Send yours, like: my tap is 14 dH (common practice, no source).
tell-repot-when = When the medium breaks down or the roots have no room, about every two years, best when new roots begin (common practice, no source). Then say “repotted Ruby in bark”: I hold the feed back.
tell-bottle = Not in one bottle of concentrate: its calcium falls out with the sulphate and phosphate of a feed, as white sludge. A bottle and a syringe each; in the full can they may meet, one stirred in before the other (common practice, no source).
tell-keiki = On its mother it lives on her feed. Cut it off with three roots of about 5 cm, pot it small, give clear water for three weeks, then half of what she gets (common practice, no source).
tell-dry = Never feed dry roots: they burn. Wet them with clear water first, wait a quarter of an hour, then feed (common practice, no source).
tell-first = Clear water first, then feed, never the other way round: on dry roots it burns. After a real flush feed at the next watering, not the same day (common practice, no source).
tell-spray = Feed the roots, not the leaves: they take up little, and feed that stays in the crown or a leaf joint harms it. If you mist, clear water, in the morning (common practice, no source).
tell-heat = Above about 35 °C they hardly grow: clear water only, in the cool of the morning, and feed again when it is cooler (common practice, no source).
tell-no-bloom = More feed does not make it bloom, light does: bright, without midday sun, and for a Phalaenopsis some weeks of nights below about 18 °C. A quarter of the label rate while it grows is enough (common practice, no source).
tell-summer = Not stronger: the usual dose. They drink more often in summer, and so get more by themselves; above about 35 °C clear water only (common practice, no source).
tell-in-flower = Yes, its usual dose or half of it, never more for the flowers. Wet the roots first, and keep feed off the flowers (common practice, no source).
tell-repot-flower = Better not: it may drop its flowers. Wait until they are over and new roots begin; only rotten roots or soaked, decayed medium cannot wait (common practice, no source).
tell-before-repot = No: clear water the day before, that makes the roots supple. Feed again when new root tips show, or after { $weeks } weeks (common practice, no source).
tell-rest-feed = No feed at rest: it takes up nothing, and the salts stay at its roots. Little clear water, or none for those that rest dry, until new growth shows (common practice, no source).
tell-rest-which = That differs by kind. Send it with its name, like: when does Dendrobium nobile rest?
tell-rest-none = { $plants } has no set rest in my almanac: feed it on as long as it grows, in winter half as much.
tell-rest-span = { $plants } rests by the calendar from { $begin } to { $end }: no feed{ $dry ->
    [yes] , and kept dry
   *[no] , little clear water
}. Start again after that, with new growth or new roots.
tell-water-amount = So much that some runs out below, then let it drain: never leave it standing in water. Send its pot, like: phal stands in bark, 12 cm pot; the plan says how many ml (common practice, no source).
tell-soak = Both will do: pouring rinses old salts out, soaking for ten minutes wets dry bark better. Fresh water for each pot, as shared water carries rot and pests (common practice, no source).
tell-ice = Better water as warm as the room: ice chills the roots, carries no feed and rinses no salts out (common practice, no source).
tell-boiled = Boiling or a filter jug takes only part of the lime out; let boiled water cool. For hard water mix in rain or reverse osmosis; never water from a salt softener (common practice, no source).
tell-lime = Hard water works mixed half and half with rain or reverse osmosis water; rinse white crusts out with it. Send its figure and I reckon with it, like: my tap is 18 dH (common practice, no source).
tell-normal = Of that I see nothing: tell me what it looks like, like: my phal has yellow leaves. Until we know, clear water and no feed.
tell-often = At every watering a quarter of the label rate, and once a month clear water only; or every two weeks half. In winter half of that, at rest nothing (common practice, no source).
tell-often-sensitive = These bear little: at every watering an eighth to a quarter of the label rate, never more, and once a month clear water only. In winter half of that, at rest nothing (common practice, no source).
tell-away = Before you go, rinse the pots with clear water. Two or three weeks without feed harm nothing, so whoever waters gives clear water only, when a pot feels light, and lets none stand in water. Feed again when you are back, never more to make up (common practice, no source).
tell-sticky = Clear drops on spikes and young leaves are often only sap. Sticky leaves with brown or white bumps can be scale insects: wipe them off and keep the plant apart (common practice, no source).
tell-gnats = Small flies around pots are mostly fungus gnats: they live in wet, old medium and hardly harm grown plants. Let it dry more between waterings, empty saucers, hang yellow sticky cards; fresh medium if it breaks down (common practice, no source).
tell-dry-roots = White or silver and firm is a healthy dry root: it turns green when wet. Water when most are silver; nothing to cut, no more feed. Flat, hollow or brown is dead (common practice, no source).
tell-sunburn = Move it out of direct sun. A burnt patch, pale, then brown and dry, does not heal: leave the leaf on. Cut only if it turns soft and spreads. No extra feed; water as usual (common practice, no source).
tell-heat-stress = Clear water only, no feed while it is hot. Move it to the coolest shady place with moving air, keep the roots moist, mist in the morning. Cool growers like Masdevallia drop leaves above about 25 °C. Soft roots or stems? Tell me (common practice, no source).
tell-mould = Mould lives on dead medium, not on the plant; it says too wet, too little air, or old. Scrape it off, let it dry more, give more air; fresh medium if it is soft or smells. No feed until it is dry (common practice, no source).
tell-algae = Green film is algae: light and feed on wet pellets, moss or pots. They hardly harm roots. Shade the pot, rinse with clear water once a month, let the top dry between (common practice, no source).
tell-broken = Cut torn leaves and roots smooth with a clean blade, keep the cuts dry for some days, and set it upright and steady in shade. Clear water only, no feed until new root tips show (common practice, no source).
tell-air-roots = Roots outside the pot are normal: leave them on. Silver or green and firm is healthy, brown and hollow is dead (common practice, no source).
tell-flowers-over = Flowers fade after weeks or months: that is normal. Feed on as before. If leaves or roots suffer too, tell me, like: leaves yellow on my phal.
tell-buds = Buds mostly drop from a change: a move, a cold or hot draught, dry air, dry roots, or ripe fruit near by. Leave the plant where it is, keep its roots lightly moist, and give no extra feed (common practice, no source). Soft roots or marks on leaves? Tell me those too.
tell-spike = On a Phalaenopsis cut a brown, dry spike at its base; a green one may stay, as it can flower again (common practice, no source).
tell-missed = A missed feed does no harm: never make up for it with more. Clear water first, then go on with the usual amount (common practice, no source).
tell-repotted = After repotting clear water only until new root tips show, or for { $weeks } weeks; then feed as usual. Say “repotted Ruby”, and the plan keeps count (common practice, no source).
tell-keeps = Dry and closed, powder keeps for years; a liquid until the date on its bottle. Do not use it where it smells, has gone lumpy and no longer dissolves, or has set crystals (common practice, no source).
tell-ph = pH 5.5 to 6.5 is usual for the ready feed (common practice, no source). Acids, “pH down” and “pH up” are beyond me: they burn skin and roots, so only by their own label, with gloves and a pH meter. Rain or reverse osmosis water mixed in lowers hardness and pH without acid.
tell-ppm-scale = Which scale it is stands on the meter or in its manual (500, 640 or 700; also 0.5, 0.64, 0.7). Or let it show the same water in mS/cm: ppm divided by mS/cm is the scale.
thanked = You are welcome. Grow on.
help-of-plant = I know { $name }, but not what you want. Send one of these:
help-of-plant-say = plan for { $name } | history of { $name } | 2 l for { $name }
help-group = I work out feed. Ask me with { "/dose" } and your line, or in a reply to me: 5 l 20-20-20 powder, phals, quarter.
    What you put on record here is the group's: all can see it; you and administrators can take it back. Your own plants and feeds I keep in private.
help-group-short = I work out feed. Ask in one line: { "/dose" } 5 l 20-20-20 powder, phals, quarter. { "/help" } shows the rest.
help-what = I work out how much feed goes into the can, for your label, plants, water and season.
    I plan a watering day: who gets feed, clear water, a flush or nothing.
    I remember what was done, remind you, and help where roots or leaves suffer.
help-group-how = Here I answer to { "/dose" } and to a reply to me. What you put on record here is the group's; your own I keep in private.
help-next-first = Try one line, in any order: “{ $example }”
help-next-group = Ask in one line: “{ $example }”
help-have = On record: { $plants ->
    [0] no plants
    [one] one plant
   *[other] { $plants } plants
}, { $feeds ->
    [0] no feed
    [one] one feed
   *[other] { $feeds } feeds
}, { $reminders ->
    [0] no reminder
    [one] one reminder
   *[other] { $reminders } reminders
}.
help-next-plants = Next, tell me your plants: “{ $example }”
help-next-feeds = Next, tell me what you feed: “{ $example }”
help-next-water = Next, tell me your water, as its hardness counts: “{ $example }”
help-next-plan = Next, see who needs what: “{ $example }”
help-next-home = Next, name a town near you, for your seasons and your clock: “{ $example }”
help-next-can = Next, tell me your can, so that mixes fit into it: “{ $example }”
help-next-reminders = Next, let me remind you: “{ $example }”
help-next-today = You are all set. “{ $example }” plans the day.
help-example-first = 5 l 20-20-20 powder, phals in bark, quarter
help-example-group = 5 l 20-20-20 powder, phals, quarter
help-example-plants = add 3 phals in bark, 12 cm pots, kitchen
help-example-feeds = my powder is 20-20-20, label 1 g per litre, call it blue tub
help-example-water = my tap is 14 dH
help-example-plan = what's on today
help-example-home = I live in Porto
help-example-can = my can holds 5 l
help-example-reminders = remind me to flush every first Sunday at 9
help-example-today = what's on today
help-topics = For examples, send “help” and one of these: { $topics }.
help-about = help { $topic }
help-word = help
# What is tapped below an answer, and read as if it had been typed.
tap-undo = undo
tap-why = why
tap-more = more
tap-done = done
tap-yes = yes
tap-no = no
tap-all = all

# --- topics of help: a line, then examples to send, parted by | ---
topic-name-dose = dose
topic-name-plants = plants
topic-name-feeds = feeds
topic-name-water = water
topic-name-plan = plan
topic-name-log = log
topic-name-reminders = reminders
topic-name-trouble = trouble
topic-name-salts = salts
topic-name-bottles = bottles
topic-name-compare = prices
topic-name-pictures = pictures
topic-name-settings = settings
topic-name-group = group
topic-name-data = my data
topic-dose = A dose in one line, in any order; then change it with a few words:
topic-dose-say = 5 l 20-20-20 powder, phals in bark, quarter | 3 l 15-5-15 powder, 80 ppm N | half that | and in sphagnum? | why
topic-plants = Put plants on record, and change what is known of them:
topic-plants-say = add 3 phals in bark, 12 cm pots, kitchen | my plants | move Ruby to the balcony | repotted Ruby in moss | Ruby is resting
topic-feeds = Your feeds with their labels, and which one suits:
topic-feeds-say = my powder is 20-20-20, label 1 g per litre, call it blue tub | my feeds | what is missing in blue tub | which feed for bloom
topic-water = Your water, whether it suits, and how to mend it:
topic-water-say = my tap is 14 dH | is my water good for phals? | mix tap and rain to 6 dH | do I need cal mag?
topic-plan = A watering day: who gets feed, clear water, a flush or nothing, from one can:
topic-plan-say = what's on today | plan for Saturday | done | which feed for the vandas
topic-log = Tell me what you did; ask what was done; take back what was wrong:
topic-log-say = fed everything in the kitchen, quarter | flushed all phals yesterday | what did Ruby get since October | undo
topic-reminders = I remind you in plain words, at your hour:
topic-reminders-say = remind me to flush every first Sunday at 9 | feed the vandas every 10 days from May to September | my reminders | quiet hours 22 to 8 | calendar
topic-trouble = Say what you see; I ask back where it matters, and make a plan:
topic-trouble-say = brown root tips and white crust on Ruby | wrinkled leaves, roots are firm | is that too much?
topic-salts = Salts in pots, and what a meter says:
topic-salts-say = how salty is Ruby | how do I flush Ruby | runoff 1.6 from Ruby | my meter says 0.9
topic-bottles = Stock solutions, and which feeds may share a bottle:
topic-bottles-say = 500 ml stock of blue tub | stock 1:100 of 20-20-20 | can blue tub and chalk share a bottle | blend my feeds for bloom
topic-compare = What feeds cost and bring:
topic-compare-say = blue tub costs 14 euro for 500 g | compare my feeds | which is cheaper
topic-pictures = To look at and to share:
topic-pictures-say = my year | salts of Ruby as a picture | dose card
topic-settings = How I speak and measure:
topic-settings-say = my scale shows 0.1 g | I have no scale, only spoons | US units | my language is Polish | my settings
topic-group = For a group's administrators:
topic-group-say = our tap is 18 dH | our language is German | flush Sunday at 9 | be quiet | quiet hours 22 to 7 | forget the group
topic-data = Your records are yours:
topic-data-say = export my data | import my-data.json | forget me

# --- words of the trade, explained ---
explain-none = Of what? Send it like: what is EC. After a dose, “explain more” says why each step is there.
explain-ec = EC says how much salt is dissolved, in mS/cm: rain is near 0, tap often 0.3 to 0.8, a mild feed adds 0.1 to 0.4. Roots feel all of it together.
explain-ppm = ppm is milligrams in a litre (mg/l). 100 ppm N is 0.1 g of nitrogen in each litre; what else the feed holds is not counted in it.
explain-npk = The three numbers are per cent of weight: nitrogen N, phosphate P2O5, potash K2O. 20-20-20 holds 20 g of nitrogen in 100 g. The dose follows the nitrogen.
explain-hardness = Hardness is calcium and magnesium in the water; 1 °dH is 17.8 mg/l as CaCO3. Some is food, much of it builds up in the pot and lifts the pH.
explain-strength = Full strength is the label's rate, or 200 mg/l N where none is told. Orchids grow slowly: a quarter at every watering feeds as much in a month as full strength once, and burns less.
explain-flush = A flush is clear water, slowly, until about twice the pot has run through: it carries out the salts that feed and water leave behind. About once a month while you feed.
explain-overfed = Too much feed shows at the roots first: brown tips, then leaf tips that die back, and a white crust on the medium or the pot. Then clear water through the pot until it runs freely, several times, and no feed until new root tips show. Send what you see, like: brown root tips on Ruby.
explain-salts = What roots do not take up stays in the pot, and each watering dries it stronger. Brown root tips, dying leaf tips and white crusts are the signs.
explain-rest = Some orchids stop in winter and take nothing up. Feed then only salts the pot, so they get clear water, little or none, until new growth or roots show.
explain-winter = In winter light is short and growth slow; roots take up about half, so the dose is halved. A plant that grows under lamps can have more: say “growing”.
explain-medium = Sphagnum and clay pellets hold salts back, bark lets them run through. So the same feed is weaker in the first two.
explain-stock = A stock is a stronger solution made ahead: 2 g in 100 ml, of which 25 ml hold half a gram. It makes small doses exact with a coarse scale. Cool, dark, labelled, two weeks.
explain-nitrogen = Nitrate is taken up at once, ammonium slowly in the cold, urea only after microbes have turned it, which bare bark and winter slow down. More nitrate is the safer label.
explain-calcium = Rain and RO water bring no calcium or magnesium, and many feeds hold none. Use a feed that shows both, some tap water, or a supplement; never in one concentrate with phosphate.
explain-pure_water = RO, distilled and rain water hold nearly no salts: good for sensitive roots, but without calcium and magnesium. Some tap water or a feed that has both mends it.
explain-softened = A softener swaps calcium for sodium. Orchids cannot use sodium and it stays in the pot: take the tap before the softener, or rain.
explain-sensitive = Masdevallia, Pleurothallis and their kin, Dracula, Disa, Miltoniopsis and Phragmipedium burn first: at most a quarter of the label and 50 mg/l N, and purer water.
explain-ceiling = No answer goes over the label, nor over what the most sensitive plant named bears; no wording lifts that. Where a step would, it is cut, and “why” shows it.


# --- is it too much, home remedies, pets ---
ask-judge-measure = How much is that? Measure it once in millilitres or grams, and send it like: 5 ml of 7-5-6 in 2 l, too much?
ask-judge-volume = In how many litres? Send it like: 5 ml of 7-5-6 in 2 l, too much?
ask-judge-volume-given = In how many litres was it? Send it like: I put 10 g in 8 l. Until then no feed, clear water only.
ask-judge-product = Of which feed? Send it with the three numbers on its label, like: 5 ml of 7-5-6 in 2 l, too much?
judge-unknown-feed = Whether that was too strong I can tell only with the three numbers of its label. Send it like: I put 5 ml of 7-5-6 in 2 l.
judge-over = Too much: { $times } times the most. At most { $most } { $unit } in { $volume }; I would give { $usual } { $unit }.
judge-perhaps-over = Perhaps too much: the most is { $most } { $unit } in { $volume }. I would give { $usual } { $unit }; weigh it.
judge-strong = Not over the most ({ $most } { $unit } in { $volume }), but stronger than I would give: { $usual } { $unit }.
judge-fine = Fine: not too much. I would give { $usual } { $unit } in { $volume }; the most is { $most } { $unit }.
judge-weak = Not too much, rather weak: I would give { $usual } { $unit } in { $volume }.
judge-makes = { $about ->
    [yes] Yours is about { $amount } { $unit }: { $percent } % of full strength
   *[no] Yours is { $percent } % of full strength
}{ $n ->
    [none] .
   *[other] , N { $n } mg/l.
}
judge-rinse = If they had it already: rinse with plenty of clear water now, and pause the feed.
judge-spoons = A level teaspoon is taken as 6 g; spoons of powder differ, so weigh one.
judge-taken = Taken: { $what }.
last-most = The most in { $volume } is { $most } { $unit }; I gave { $amount } { $unit }.
last-strong = { $amount } { $unit } is { $percent } % of full strength{ $at_most ->
    [yes] , the most that I give in { $volume }.
   *[no] . The most in { $volume } is { $most } { $unit }.
}
last-spoon = { $spoons ->
    [none] No: it is less than the smallest part of a teaspoon that can be told.
    [many] No: so many spoons go wrong. Weigh or measure it.
   *[other] { $unit ->
        [ml] About { $spoons } of a teaspoon, if it is a measuring spoon.
       *[other] Roughly { $spoons } of a level teaspoon; powders differ, so weigh it.
    }
}
last-drops = Drops differ with every bottle, so I count none. Measure { $amount } { $unit }.
refuse-remedy = No dose for { $what }: no label says what it holds, so I cannot work it out, and { $kind ->
    [calcium] it hardly dissolves. For calcium use a feed with calcium or some tap water, and send me
   *[other] what is left of it rots in the pot. Send me
} a feed with its numbers, like: 2 l 20-20-20 powder, quarter.
pets-keep = Keep feed, bottles of stock and the full can away from pets and children, never in a drinking bottle; empty the saucers. I cannot say that any feed is safe to drink.
pets-call = { $who ->
    [told_child] Call the poison centre at once, with the label in your hand.
    [told_pet] Call a vet at once, for a child the poison centre, with the label in your hand.
    [child] If a child drank or ate of it: call the poison centre at once, with the label in your hand.
    [anyone] If anybody drank or ate of it: call the poison centre at once, for a pet a vet, with the label in your hand.
    [fish] If feed got into a pond or fish tank: change much of its water at once and call a vet (common practice, no source).
   *[other] If one drank or ate of it: call a vet, for a child the poison centre, at once, with the label in your hand.
}
argue-stays = I stay below full strength on purpose: too much burns roots, too little only slows growth (common practice, no source). Who wants it stronger says so in the line, like: half strength. I never go over the label.
refuse-pests = Keep it apart, and wipe off what you see with a damp cloth or cotton bud, leaf joints and undersides too; look again every few days (common practice, no source). I know feed and water, not what kills pests or mould, so I give no dose for it: follow the label of the product, keep children and pets away, and ask a local orchid society or an extension service.
refuse-food = { $how ->
    [eat] Do not eat or drink it, neither feed nor an orchid. If anybody did: call the poison centre at once, for a pet a vet, with the label in your hand.
   *[other] Not for plants you eat, nor for their pods, leaves or flowers: I work out feed only for orchids to look at. For vegetables and herbs go by the label of a feed made for them.
}
hurt-call = { $how ->
    [swallowed] Swallowed: call a doctor or the poison centre at once, with the label in your hand. In an eye or on skin: rinse with plenty of clear water.
    [breathed] Go into fresh air at once. If you still cough, feel unwell or breathe badly: call a doctor or the poison centre, with the label in your hand. In an eye or on skin: rinse with plenty of clear water.
   *[other] In an eye or on skin: rinse at once with plenty of clear water. Swallowed or breathed in, or if it still stings: call a doctor or the poison centre, with the label in your hand.
}
spill-wipe = Wipe it up with paper and plenty of water, and wash your hands. Keep children and pets off until it is clean; none of it into a pond, a stream or a drain outdoors. If a plant got it undiluted, rinse it through with clear water at once (common practice, no source).
leftover-goes = What is left goes to other plants or onto soil, never down a drain or toilet, into a pond or a stream. Keep mixed feed no longer than until the next watering, closed, dark and labelled, never in a drinking bottle; if it smells or clouds, it goes onto soil too (common practice, no source).
alarm-what = What happened? Swallowed: call a doctor or the poison centre at once, for a pet a vet. In an eye or on skin: rinse with plenty of clear water. Too much on a plant: clear water through the pot until it runs freely, several times, and no feed. Then tell me in a line, like: the dog drank from the can.

# --- the first meeting, groups and sharing ---
meet-hello = I work out how much feed goes into the can, and remember your plants. A question at once: 2 l 20-20-20 powder, phals in bark.
meet-home = Where do you live? A town is enough: it tells me your seasons and your clock.
meet-product = Which feed do you have? Send what its label says: 20-20-20 powder, 1 g per litre.
meet-add = Which plants do you have? One kind is enough: 3 phals in bark, 12 cm pots.
meet-skip = Skip
meet-done = That is all I need to know for now. Send “2 l” for a dose, or “what's on today”; “help” shows the rest.
refuse-administrators-only = Only administrators of this group change that. Ask one of them, or tell me in private for yourself.
refuse-administrators-quiet = Only administrators of this group make me quiet or have me speak up again: ask one of them.
refuse-administrators-remove = Only administrators take plants or feeds off this group's records: ask one of them.
refuse-administrators-all = Only administrators of this group do that, as it is about all of the group: ask one of them, or tell me in private for yourself.
refuse-own-private = That is about you alone, and here all read along: send it to me in private.
ask-language = Which language? So far I speak { $known }. Send it like: our language is English.
refuse-language-unknown = I know no language called “{ $text }”. So far I speak { $known }.
refuse-language-not-yet = { $language } is not there yet: so far I speak only { $known }. Nothing was changed.
language-set = From now on I answer in { $language }.
language-line = Language: { $language }.
quiet-private = That is for groups. Here I only answer when you write.
kept-group = I keep what was put on record here: plants, feeds, water, settings, reminders, and a log that shows members by a mark, not by name.
    Of a question I keep the text until it is answered, each member's last request for follow-ups, and what “Details” shows for thirty days. What is not addressed to me I do not keep.
    An administrator gets a copy with “export”, and deletes all of it with “forget the group”.
kept-own = I keep what you put on record: plants, feeds, water, settings, reminders, and the log. Besides, your last request for follow-ups, a text until it is answered, and details and further pages for thirty days.
    “export” gives you a copy, “forget me” deletes all of it.
kept-no-questions = I keep no list of who asked what. What was put on record stands in the log: { "/diary" }.
remove-me = An administrator removes me like any member; then I send nothing more. What is on record stays until “forget the group” deletes it: send that first.
quiet-on = Quiet: in this group I answer only to a command such as /dose. “/dose speak up” ends it.
quiet-off = I answer again when you reply to me or mention me.
quiet-night = I answer only who asks, by day and by night. For reminders send: quiet hours 22 to 7. “be quiet” lets me answer a group only at commands.
quiet-line = Quiet: in this group I answer only to a command such as { "/dose" }.
post-only-text = I read text, places and files that I exported. Write it in a line, like: 2 l 20-20-20 powder, phals.
post-added = I work out feed for orchids. Ask like this: { "/dose" } 5 l 20-20-20 powder, phals, quarter. Or reply to an answer of mine{ $mentions ->
    [yes] , or mention me.
   *[no] .
}
    I keep still otherwise, and keep nothing that is not addressed to me.{ $known ->
    [yes] { " " }What this group put on record before is still here.
   *[no] {""}
}
    Administrators: { "/help" } group shows how to set tap water, language, reminders and quiet.
post-too-long = That is longer than I read. Send the question in one line.
post-slow-down = One at a time, please: I answer you again in { $seconds } seconds.
post-stale-button = That question is over. Send it again if you still want it.
post-not-yours = This choice is for the person who asked.
post-for-administrators = This choice is for administrators of the group.
post-done-already = Done already.
post-on-record = That message is on record already; editing it changes nothing. If it was the last one, send { "/undo" } and then the right line.
post-interrupted = Something broke on our side, and I could not answer. Nothing was changed; please send it again.
post-place = Set your home to { $place }, { $country }?
post-place-says = I live in { $place }, { $country }
post-import-says = import { $name }
post-no-place = I know no town near there. Send the nearest larger town: I live in Porto.
post-details = Details
post-save = Save these plants
post-own-water = Ask with my own water
post-card-season = No season was said: this is the more careful answer of both hemispheres.
post-card-gone = That card is too old. Send the question again.
post-card-no-plants = That card names no plants. Tell me yours: add 3 phals in bark.
post-saved-already = They are on your list already: my plants.
post-card-ask = Type a question: 5 l 20-20-20 powder, phals, quarter
post-next = More ({ $page }/{ $pages })
menu-dose = How much feed for so much water
menu-plan = What to do today
menu-plan-says = what's on today
menu-plan-for-says = plan for
menu-plants = Plants on record
menu-plants-says = my plants
menu-shelf = Feeds on record
menu-shelf-says = my shelf
menu-diary = What was done lately
menu-diary-says = show the log
menu-undo = Take back the last entry
menu-undo-says = undo
menu-help = What you can say
menu-help-says = help
menu-dose-says = how much feed

# --- reminders ---
reminder-and = and also plus
reminder-cue = remind me to
reminder-own-words = “{ $text }”
reminder-what = { $kind ->
    [flush] flush
    [feed] feed
    [water] water
    [look] { $plants ->
        [none] have a look
       *[other] look at
    }
   *[other] remember
}{ $plants ->
    [none] {""}
   *[other] {" "}{ $plants }
}
task-flush = flush
task-feed = feed
task-water = water
reminder-every = { $unit ->
    [day] { $every ->
        [1] every day
        [2] every other day
       *[other] every { $every } days
    }
    [week] { $every ->
        [1] every week
       *[other] every { $every } weeks
    }
   *[month] { $every ->
        [1] every month
       *[other] every { $every } months
    }
}
reminder-weekdays = { $every ->
    [1] every { $days }
    [2] every other { $days }
   *[other] every { $every } weeks on { $days }
}
reminder-workdays = { $every ->
    [1] Monday to Friday
   *[other] every { $every } weeks, Monday to Friday
}
reminder-nth = on { $days } of { $every ->
    [1] each month
   *[other] every { $every } months
}
reminder-nth-day = the { $nth ->
    [first] first
    [second] second
    [third] third
    [fourth] fourth
    [fifth] fifth
   *[last] last
} { $day }
reminder-month-days = on { $days } of { $every ->
    [1] each month
   *[other] every { $every } months
}
reminder-day-of-month = the { $day }{ $rest ->
    [1] st
    [2] nd
    [3] rd
   *[other] th
}
reminder-last-day = the last day
reminder-yearly = { $every ->
    [1] every year
   *[other] every { $every } years
} { $on }
reminder-nth-yearly = on { $days } in { $months }
reminder-on = on { $days }
reminder-months = from { $first } to { $last }
reminder-in-months = in { $months }
reminder-not-months = except in { $months }
reminder-not-days = except on { $days }
reminder-at = at { $time }
reminder-until = until { $day }
reminder-times = ({ $times } times)
reminder-moment = { $day } { $time }
reminder-line = { $what }{ $often ->
    [none] : { $next }
   *[other] {" "}{ $often }; next { $next }
}{ $state ->
    [paused] {" "}(held: I could not reach you)
   *[other] {""}
}
reminder-set = I remind you: { $line }.
reminder-already = That is set already: { $line }.
reminder-next = Next time to { $what }: { $next }.
reminder-half = Taken as { $half ->
    [afternoon] the afternoon; for the morning send: { $hour } am.
   *[morning] the morning; for the evening send: { $hour } pm.
}
reminder-guess-every-second = Taken as every other one; for the second of each month send: every second Sunday of the month.
reminder-guess-first-of-month = Taken as the first of each month; else send: on the last Saturday of each month.
reminder-utc = I do not know where you live, so this is in UTC, which may be hours off your clock. Send it like: I live in Porto.
reminder-none-yet = No { $plants } on record yet; it counts once there are some.
reminder-dropped = All right, no reminder set.
reminder-not-now = All right, not now: nothing was changed. To end your reminders, send: stop reminding me.
reminder-kept = All right, all stays as it is.
reminder-gone = That one has ended already.
reminders-moved-along = { $count ->
    [one] Your reminder goes by the clock there from now on.
   *[other] Your { $count } reminders go by the clock there from now on.
}
reminders-none = { $whose ->
    [group] No reminders here. An administrator sets one like: remind us to flush every first Sunday at 9.
   *[own] No reminders. Set one like: remind me to flush every first Sunday at 9.
}
reminders-head = { $count ->
    [one] One reminder:
   *[other] { $count } reminders:
}
reminders-hint = “move 1 to Monday”, “skip 1”, “stop 1” or “pause reminders until June” changes them.
reminder-stopped = { $count ->
    [one] Stopped: { $what }.
   *[other] Stopped { $count }: { $what }.
}
reminder-moved = Moved: { $what }, { $next }.{ $again ->
    [yes] {" "}After that as before.
   *[no] {""}
}
reminder-changed = Changed: { $line }.
reminder-skipped = Passed over: { $what }. { $next ->
    [none] That was the last time.
   *[other] Next { $next }.
}
reminder-not-due = Nothing to pass over: { $what } comes { $next } anyway.
reminder-all = all
reminders-paused = Quiet until { $day }. { $count ->
    [0] Nothing would have come before that.
    [one] One reminder waits till then.
   *[other] { $count } reminders wait till then.
}
reminders-resumed = { $count ->
    [one] One reminder comes again as before.
   *[other] { $count } reminders come again as before.
}
reminders-not-paused = Nothing was paused.
reminder-quiet-so = Quiet from { $start } to { $end }: no reminder comes then, unless you named that hour yourself. Who asks is answered.
reminder-quiet-none = No quiet hours: reminders come at any hour.
rhythm-choice-1 = every week
rhythm-choice-2 = every two weeks
rhythm-choice-3 = on the first Sunday of each month
ask-remind-when = When, or how often, shall I remind you of that? Send it like: every first Sunday at 9, every 10 days, in 3 weeks.
ask-remind-what = What shall I remind you of? Send it like: flush all phals.
ask-remind-home = Where do you live? I need your clock for that; a town is enough, like: Porto.
ask-remind-home-changed = Changed. And where do you live? I need your clock; a town is enough, like: Porto.
ask-remind-wish = Shall I remind you of it? Yes or no; I keep no rhythm without a reminder.
ask-remind-home-first = First I need your clock, then that can be changed. Send a town, like: Porto.
ask-rhythm-which-days = On which days? Send them like: Monday and Thursday.
ask-rhythm-two-meanings = Twice as often or half as often? Send it like: every two weeks, or: Monday and Thursday.
ask-rhythm-too-often = Once a day is the most I remind. Send it like: every day at 8.
ask-rhythm-range = That leaves it open. Send one figure, like: every 2 weeks.
ask-rhythm-exception = Months, seasons and days of the week I can leave out, single days not. Send it like: every 2 weeks except in December; on the day say: skip it this time.
ask-rhythm-vague = How often is that? Send it like: every 2 weeks, or: on the first Sunday of each month.
ask-rhythm-number = I take 1 to 999. Send it like: every 10 days.
ask-rhythm-clock = There is no such time. Send it like: at 9:30, or: at 6 pm.
ask-rhythm-two-times = One time for each reminder: which one? Send it like: every day at 8.
ask-rhythm-two-days = Two days at once: which one? Send it like: on 3 March.
ask-rhythm-two-rhythms = Two rhythms at once: which one? Send it like: every 2 weeks.
ask-reminder-number = There are { $count }. Send “my reminders” to see their numbers.
ask-reminder-none-such = I have no such reminder. Which of these?
ask-reminder-which = Which one? Send its number.
ask-reminder-not-then = Send the days on which it shall come, like: move it to every Tuesday and Thursday; or, for once: skip it this time.
ask-reminder-move = To when? Send it like: move it to Monday, or: move it to every 3 weeks.
ask-reminder-until = Until when? Send it like: until 1 September, or: for two weeks.
refuse-reminder-past = That moment has passed, or never comes. Send a later one, like: tomorrow at 9.
refuse-rhythm = I cannot keep that rhythm. Send it like: every 10 days, every first Sunday, on 3 March.
refuse-administrators-reminders = Only administrators set or change the group's reminders. For your own, tell me in private.
event-reminder = reminder
ping-done = done
ping-later = later
ping-skip = skip
ping-head = It is time: { $what }.
ping-head-several = It is time for { $count } things:
ping-late = {" "}(was due { $day }{ $missed ->
    [0] {""}
    [one] , and once more since
   *[other] , and { $missed } times since
})
ping-asleep = Not now, resting: { $plants }.
ping-mounted = Mounted, so only rinsed: { $plants }.
ping-rest-begins = { $plants } begins its rest: { $dry ->
    [yes] keep it dry, no feed
   *[no] clear water only, and little of it
}, until new growth shows.
ping-rest-ends = { $plants } ends its rest: water and feed again, weakly at first, once it grows.
ping-hint = Send “done”, “later” or “skip”.
ping-noted = Noted.
ping-again = I ask again { $next }.
ping-answered = That is answered already.
ping-repeat = (You may have had this once already.)
offer = Shall I remind you? { $items }{ $more ->
    [0] {""}
   *[other] {" "}and { $more } more
}. Always yours to move or stop.
offer-flush = Clear water through all pots on the first Sunday of each month (between, a quarter of the feed at every watering)
offer-feed = feed once a month for { $plants }, which bear little
offer-look = when { $plants } begins and ends its rest
offer-yes = yes
offer-no = no
offer-declined = All right, I do not ask again. Later you can say: remind me to flush every first Sunday at 9.
offer-taken = Set, each at { $time }:

# --- taking along and forgetting ---
count-plant = { $count } { $count ->
    [one] entry of plants
   *[other] entries of plants
}
count-product = { $count } { $count ->
    [one] product
   *[other] products
}
count-water = { $count } { $count ->
    [one] water
   *[other] waters
}
count-place = { $count } { $count ->
    [one] place
   *[other] places
}
count-reminder = { $count } { $count ->
    [one] reminder
   *[other] reminders
}
count-event = { $count } { $count ->
    [one] log entry
   *[other] log entries
}
count-nothing = nothing but your settings
export-done = Everything of { $whose ->
    [group] this group
   *[own] yours
}: { $what }.
export-none = Nothing of yours is on record.
# the .ics file: titles and descriptions of its entries, and what is said beside it
calendar-title = { $kind ->
    [flush] Flush
    [feed] Feed
    [water] Water
    [look] { $plants ->
        [none] Have a look
       *[other] Look at
    }
   *[other] Remember
}{ $plants ->
    [none] {""}
   *[other] {" "}{ $plants }
}
calendar-often = Comes { $often }.
calendar-plants = Plants: { $plants }.
calendar-amounts = For the amounts of that day send “plan” in the chat.
calendar-rest-begins = Rest begins: { $plants }
calendar-rest-ends = Rest ends: { $plants }
calendar-reminders = { $count } { $count ->
    [one] reminder
   *[other] reminders
}
calendar-rests = { $count } { $count ->
    [one] beginning or end of a rest
   *[other] beginnings and ends of rests
}
calendar-done = Calendar until { $until }: { $what }. Open the file to add it.
calendar-copy = It is a copy: after a change here, send “calendar” again.
calendar-none = Nothing for a calendar yet: { $whose ->
    [group] the group has
   *[own] you have
} no reminder, and no plant whose rest I know.
calendar-flush = No flush is set, so none is in it. Usual is clear water once a month; the next would be { $day }. { $whose ->
    [group] An administrator sets it with: remind us to flush every first Sunday at 9.
   *[own] To set it, send: remind me to flush every first Sunday at 9.
}
calendar-flush-choice = { $whose ->
    [group] remind us to flush every first Sunday at 9
   *[own] remind me to flush every first Sunday at 9
}
calendar-north = I do not know where you live, so the rests are those of the north. Send it like: I live in Porto, then “calendar” again.
calendar-held = { $count ->
    [one] One reminder is
   *[other] { $count } reminders are
} left out: held, as I could not reach you.
ask-calendar-home = Where do you live? Rests fall half a year apart north and south; a town is enough, like: Porto.
ask-forget = Delete everything of { $whose ->
    [group] this group
   *[own] yours
}, for good: { $what }? Send “yes” or “no”. “export” first gives you a copy.
forget-none = Nothing of yours is on record.
forget-cancelled = Nothing was deleted.
forgotten = Deleted: { $what }. Nothing of { $whose ->
    [group] this group
   *[own] yours
} is left here.
ask-import-file = { $name ->
    [none] Which file? Send it like: import sinkside-2026-03-01.json.
   *[other] I cannot open “{ $name }”. Send the name of an export, like: import sinkside-2026-03-01.json.
}
ask-import-late = The file did not come in time. Send it once more.
ask-import = The file holds { $what }. Take it in? Send “yes” or “no”.
ask-import-replace = The file holds { $what }. It would replace what you have: { $had }. Send “yes” or “no”.
import-cancelled = Nothing was changed.
imported = Taken in: { $what }.
refuse-import-problem = That file does not fit: { $where } ({ $count } { $count ->
    [one] problem
   *[other] problems
}). Nothing was changed. Send an export that was not edited.
refuse-import-newer = That file is from a newer version. Nothing was changed. Update first, then send it again.
refuse-import-large = That file is too large (more than { $most } MB). Nothing was changed. Send an export of this bot.
refuse-import-foreign = That is not an export of this bot. Nothing was changed. Send the JSON file that “export” gave.

# --- refusals of the records ---
name-is-number = a number
name-is-figure = a figure
name-is-order = something to do or a day
name-is-slot = { $slot ->
    [medium] a potting medium
    [genus] a kind of orchid
    [month] a month
    [season] a season
    [growth] a state of growth
    [water] a kind of water
    [form] a kind of product
    [regime] a rhythm
    [count] a number
   *[other] a figure
}
refuse-name-means = “{ $name }” also means { $meaning }. Send another name.
refuse-name-taken = You have a “{ $name }” already. Send another name, like “{ $name } 2”.
refuse-count = Send how many there are, from 1 to { $most }.
refuse-too-many = That would be more than { $most } entries. Take some off first, or put plants that are alike in one entry, like: add 40 phals.
refuse-bad-value = That holds a value that does not fit: too long, too large, or below nothing. Nothing was written. Send it again with another.
refuse-records = That does not fit what is on record. Nothing was written. Send “my plants” to see what there is.
refuse-changed-since = Somebody else changed that a moment before. Nothing of yours was written. Send “my plants” to see what there is.
refuse-future = That day is still to come. Send a day that has been, like: fed Ruby yesterday.
refuse-date-ahead = That day is still to come. Send a day that has been; or, if it was last year, the year too, like: fed Ruby on 3 march 2025.
refuse-which-day = Which day? Send one, like: fed Ruby yesterday; or: on 3 march.
refuse-no-such-day = There is no such day. Send it like: 3 march.
refuse-nitrogen-over = The forms of nitrogen add up to { $forms } %, but the label shows { $n } % N. Look at the label again and send both.
file-saved = Saved here as { $names }.
picture-saved = [{ $alt }: saved here as { $name }]

# --- reasons of the plan ---
reason-given-today = given already
reason-rest-dry = rests, keep it dry
reason-rest-genus = rests now
reason-rest-growth = resting
reason-repotted = { $weeks ->
    [0] just repotted
    [one] repotted a week ago
   *[other] repotted { $weeks } weeks ago
}
reason-flush-due = { $weeks ->
    [one] a week without clear water
   *[other] { $weeks } weeks without clear water
}
reason-flush-mounted = { $weeks ->
    [one] a week without clear water
   *[other] { $weeks } weeks without clear water
}
reason-flush-salts = salts over its limit by the log
reason-rescue = { $weeks ->
    [0] recovers, no feed for some days yet
    [one] recovers, no feed for a week yet
   *[other] recovers, no feed for { $weeks } weeks yet
}
reason-rescue-resume = weaker after its rescue, and only if it shows new tips
reason-flush-overfed = too much feed: rinse it out first
reason-types-rest = some of its kind rest now: tell me the species
reason-not-yet = not yet its turn
reason-plant-unknown = kind unknown, careful
reason-growth-growing = growing
reason-growth-new_roots = new roots
reason-growth-new_leaves = new leaves
reason-growth-new_pseudobulbs = new pseudobulbs
reason-growth-flowering = in spike or flower
reason-growth-slow = growing slowly
reason-growth-seedling = seedling
reason-season-winter = winter half
reason-season-spring = spring
reason-season-summer = summer
reason-season-autumn = autumn
reason-medium-sphagnum = sphagnum holds salts
reason-medium-clay_pellets = clay holds salts
reason-seedling = seedlings get half
choice-calcium-for-pure-water = it brings calcium and magnesium, which this water lacks
choice-growth-nitrogen = more nitrogen than phosphorus, for growth
choice-bloom-potassium = plenty of potassium, for flowers
choice-balanced-in-doubt = balanced, right where nothing else speaks
choice-nitrate = most of its nitrogen is nitrate, which roots take up at once
choice-bark-nitrogen = bark takes nitrogen for itself, and here no number is larger than the nitrogen
choice-complete = all macro and micro elements are on its label
choice-micro-elements = micro elements are on its label

# --- the salts in pots ---
salts-mounted = { $plants }: a mount holds hardly any salts. Rinse it with clear water once a month.
salts-one = { $plant }: about { $ec } mS/cm in the wet pot ({ $low }–{ $high }), { $state ->
    [over] over its limit of { $limit }.
    [unsure] perhaps over its limit of { $limit }: its log is too short to tell.
    [water] over its limit of { $limit }.
    [near] close to its limit of { $limit }.
   *[fine] under its limit of { $limit }.
}
salts-head = The saltiest first, in mS/cm of the wet pot:
salts-line = - { $plant }: { $ec } ({ $low }–{ $high }), limit { $limit }{ $state ->
    [over] : flush it now
    [unsure] : perhaps over, its log is too short
    [water] : its water alone is too salty
    [near] : flush it soon
   *[fine] { "" }
}
salts-more = And { $count } more, less salty.
salts-due-over = { $now ->
    [yes] Flush it now.
   *[no] At this rate it is over its limit { $day }: flush it by then.
}
salts-due-month = { $now ->
    [yes] A month without clear water was up { $day }: flush it now.
   *[no] The monthly flush is due { $day }.
}
salts-due-none = Flush it once a month, and whenever what runs out is over that limit.
salts-due-water = Your water of { $water } mS/cm is too salty to flush it with: take rain or reverse osmosis water.
salts-flush = A flush: pour { $first } of clear water through, wait { $rest } minutes, then { $others } more. That leaves about { $after } mS/cm{ $reaches ->
    [yes] .
   *[no] ; more water does little.
}
salts-flush-least = That is the least that brings the salts down, by the log. With harmed roots, or a crust, pour { $usual } instead: twice the pot.
salts-from = Reckoned from { $entries ->
    [0] no entries of the log: it is a guess.
    [one] one entry of the log, with water of { $water } mS/cm.
   *[other] { $entries } entries of the log, with water of { $water } mS/cm.
}
salts-measure = Bark and moss hold salts back: measure what runs out and tell me, like: runoff 1.2 from Ruby.
why-salts-pot = water in the pot takes up what is poured, loses water to the air and salts to what runs through

# --- stock solutions and mixes ---
ask-stock-product = A stock of which feed? Put it on your shelf first, like: my powder is 20-20-20, label 1 g per litre, call it blue tub.
refuse-stock-liquid = { $product } is a liquid: it is a stock already. Measure it with a syringe.
refuse-stock-volume = A stock is 10 ml to { $most } l. Send how much, like: 500 ml stock of blue tub.
refuse-stock-ratio = A stock is thinned at most 1:{ $most }. Send it like: stock 1:100 of blue tub.
refuse-stock-strong = So strong a stock does not stay clear: take 1:{ $times }.
refuse-stock-clash = Two bottles are not enough for { $products }: leave one out, and put it into the can by itself.
stock-make = { $grams } g of { $product } in water to { $volume }.
stock-use = A litre takes { $use } ml of it { $how ->
    [n] for { $value } mg/l N
    [ec] for EC { $value } mS/cm
    [share] { $value ->
        [full] for full strength
       *[other] for { $value } of full strength
    }
   *[quarter] for a quarter of full strength
}; never more than { $full } ml.
stock-of-last = As you had the last dose.
stock-held = { $n ->
    [none] Held to the label: never more.
   *[other] Held to { $n } mg/l N: more would pass the label or what your plants bear.
}
stock-shares = The { $count } feeds share it: each is { $percent } % of its own full strength.
stock-for-the-bottle = For its label: { $label }
stock-why = { $g_l } g a litre is at most half of what stays dissolved at { $cold } °C.
stock-cautions = Shake it before use; throw it out if it goes cloudy.
stock-ratio = { $bottles ->
    [one] One bottle, thinned 1:{ $times },
   *[other] Two bottles that never meet undiluted, each thinned 1:{ $times },
} { $how ->
    [n] for { $value } mg/l N:
    [ec] for EC { $value } mS/cm:
    [share] { $value ->
        [full] for full strength:
       *[other] for { $value } of full strength:
    }
   *[quarter] for a quarter of full strength:
}
stock-bottle = { $name }: { $what } in water to { $volume }; { $use } ml a litre.
stock-ratio-means = 1:{ $times } is taken as one part in { $times } of the ready feed.
grams-of = { $grams } g { $name }
stock-label = NOT FOR DRINKING. { $what } in { $volume }. Made { $made }, use by { $use_by }. Cool, dark, away from children and pets.
ask-together = Which two? Send the numbers of both labels, like: can 20-20-20 and 15.5-0-0 + 19Ca go in one bottle?
refuse-together-label = { $product } cannot be what the label says. Look at it again and send the numbers of both.
together-yes = { $products } may share a bottle.
together-no = { $products } must not share a bottle.
together-liquid = I do not know what else is in a liquid, so { $products } get a bottle and a syringe each. In the full can they may meet.
together-can = In the ready feed, at full strength or less, they stay dissolved: put one into the full can, stir, then the other.
together-can-no = Not even in the ready feed: give them on different days.
clash-calcium-sulphate = Calcium and sulphate fall out as gypsum{ $sure ->
    [yes] .
   *[no] , if there is sulphate in it: the label does not say.
}
clash-calcium-phosphate = Calcium and phosphate fall out as a white sludge.
clash-magnesium-phosphate = Magnesium and phosphate fall out together.
clash-silicate = Silicates are alkaline: they go with nothing.
why-stock-limit = half of what dissolves in the cold, of the salt that would fall out first
why-stock-apart = calcium with sulphate or phosphate, and magnesium with phosphate, fall out where both are strong
ask-mix-products = A mix takes two powders or more on your shelf. Tell me their labels, like: my powder is 15.5-0-0 + 19Ca, call it calcium feed.
mix-amounts = { $what } in { $volume }
mix-goal = Comes closest to what { $goal ->
    [bloom] blooming plants
   *[growth] growing plants
} want, at N { $n } mg/l.
mix-held = Held to N { $n } of { $wanted } mg/l: your most sensitive plants bear no more.
mix-meets = It meets nitrogen, potassium, calcium and magnesium.
mix-short = Short of: { $what }.
mix-short-one = { $nutrient ->
    [nitrate] nitrate
   *[other] { $nutrient }
} { $brought } of { $wanted } mg/l
mix-capped = Held back by { $element }, which is toxic in excess.
mix-none = Nothing on your shelf brings N { $n } mg/l. Send the label of a feed with nitrogen.
mix-cautions = Dissolve one after the other in the full can, never as powders together. Calcium goes in last.
why-blend = { $nutrient } { $mg_l } mg/l wanted

# --- an ailing plant ---
rescue-answer-yes = yes
rescue-answer-no = no
rescue-answer-unknown = don't know
rescue-whom = { $named ->
    [yes] { $plant }
   *[no] the { $plant }
}
ask-rescue-mushy-roots = { $pot ->
    [no] Look at the roots
   *[other] Take { $plant ->
        [none] it
       *[other] { $plant }
    } out of the { $pot ->
        [maybe] pot or basket
       *[yes] { $n ->
            [many] pots
           *[one] pot
        }
    }
}: are roots soft, brown and hollow when you press them?
ask-rescue-sudden-after-cold = Did it come within days of a cold night, a draught or a journey in the cold?
ask-rescue-one-old-leaf = Is it only the lowest, oldest leaf?
ask-rescue-dry-light-pot = Is the pot often dry through and very light?
ask-rescue-white-crust = Is there a white crust on the medium or the rim of the pot?
ask-rescue-brown-root-tips = Look at the roots: are their tips brown or black?
ask-rescue-medium-stays-wet = Is the medium still wet a week after watering?
ask-rescue-new-growth-sound = Do the newest leaf and the root tips look sound?
ask-rescue-many-plants = Do other plants of yours show the same?
cause-root-rot = root rot
cause-tissue-rot = rot of crown or leaf
cause-salt-burn = salt burn
cause-thirst = thirst
cause-cold = cold
cause-old-age = old age
cause-rest = leaf drop before the rest
rescue-likely = { $likely ->
    [none] Nothing is certain. Possible: { $possible }.
   *[other] Likely: { $likely }.{ $possible ->
        [none] {""}
       *[other] {" "}Possible: { $possible }.
    }
}{ $unlikely ->
    [none] {""}
   *[other] {" "}Unlikely: { $unlikely }.
}
rescue-unclear = From that I cannot tell what it is.
rescue-do-flush = { $lead ->
    [no] Flush again with { $volume } of clear water in { $passes } parts.
   *[yes] Flush { $plant ->
        [none] { $n ->
            [many] them
           *[one] it
        }
       *[other] { $plant }
    } with { $volume } of clear water: { $passes } parts of { $part }, { $rest } minutes apart.
}
flush-now = Flush { $plants } with { $volume } of clear water: { $passes } parts of { $part }, { $rest } minutes apart. Let it run off; feed nothing that day.
rescue-do-soak = Water { $plant ->
    [none] { $n ->
        [many] them
       *[one] it
    }
   *[other] { $plant }
} through with { $volume }, until water runs out below.
rescue-do-rinse = Rinse the roots with { $volume } of clear water.
rescue-do-unpot = Take { $plant ->
    [none] { $n ->
        [many] them
       *[one] it
    }
   *[other] { $plant }
} out of the { $pot ->
    [maybe] pot or basket
   *[yes] { $n ->
        [many] pots
       *[one] pot
    }
} and the old medium.
rescue-do-cut-dead-roots = Cut off what is soft; firm roots stay.
rescue-do-fresh-medium = Put { $n ->
    [many] them into fresh medium and clean pots.
   *[one] it into fresh medium and a clean pot.
}
rescue-do-keep-apart = Keep { $n ->
    [many] them
   *[one] it
} away from other plants and do not splash.
rescue-do-humid-shade = Shade and moist air.
rescue-do-water-when-nearly-dry = Water again, and only when nearly dry.
rescue-do-remove-crust = Take the crust off first, no more than 6 mm deep.
rescue-do-shade = Keep { $n ->
    [many] them
   *[one] it
} shaded.
rescue-do-clear-water-only = Clear water only.
rescue-do-water-more-often = Water more often.
rescue-do-move-to-warmth = Move { $plant ->
    [none] { $n ->
        [many] them
       *[one] it
    }
   *[other] { $plant }
} to a warm place, 10 to 27 °C.
rescue-do-leave-leaf = Nothing to do: leave the leaf{ $plant ->
    [none] {""}
   *[other] {" "}of { $plant }
} until it comes off by itself.
rescue-do-dry-crown = Tip the water out of the crown and dab it dry.
rescue-do-cut-to-sound = Cut soft or black parts back to sound tissue with a clean blade, and let the cut dry.
rescue-do-keep-dry = No water on leaves or into the crown; moving air.
rescue-do-let-shed = Likely the normal leaf drop before the rest: nothing to do, and leave { $n ->
    [many] them in their pots.
   *[one] it in its pot.
} Little clear water, no feed. Soft canes, bulbs or roots would be rot: then tell me.
rescue-do-look-at-roots = { $pot ->
    [no] Look at the roots
   *[other] Take { $plant ->
        [none] the plant
       *[other] { $plant }
    } out of the { $pot ->
        [maybe] pot or basket
       *[yes] { $n ->
            [many] pots
           *[one] pot
        }
    } and look at the roots
}: firm and plump is sound, soft is rot, brown tips are salts.
rescue-do-look-for-spreading = Does it spread?
rescue-do-look-for-new-root-tips = Are there new root tips?
rescue-do-look-for-firmer-leaves = Are the leaves firmer?
rescue-do-look-for-more-yellow = Is more of it yellow?
rescue-do-look-again = Look again, and tell me what you see.
rescue-later = - { $days }: { $condition ->
    [more-brown-roots] if more roots are brown: { $what }
   *[other] { $what }
}
rescue-people = This is more than words can settle ({ $signs }): show it to a local orchid society or extension service.
rescue-resume = { $days ->
    [0] Feed on as usual, at { $strength } of full strength.
   *[other] No feed for { $days } days, until { $day }. Then { $when ->
        [tips] only if you see new root tips,
        [rests] it rests: only when it grows again,
       *[day] {""}
    }{ $when ->
        [day] {""}
       *[other] {" "}
    }{ $strength } of full strength{ $share ->
        [full] {", "}the usual.
       *[other] {", "}{ $share } of the usual.
    }
}
rescue-rests = No feed until new growth or roots show.
rescue-no-feed = No feed at all until it has made new roots; look again { $day }.
rescue-no-feed-yet = No feed for { $days } days, until it is known what is wrong.
rescue-assumed = Taken for the water: { $what ->
    [pot_cm] a { $pot } cm pot.
    [medium] a pot of bark.
   *[both] a { $pot } cm pot of bark.
} Tell me the right one, and ask again.
rescue-their-rate = { $rate } g per litre is about { $times } times a full label{ $known ->
    [yes] {""}
   *[no] , taken as a 20-20-20
}: too much. No feed until this is clear; then weekly about { $part } g per litre.
rescue-logged = Written down: the plan gives { $n ->
    [many] them
   *[one] it
} no feed until { $day }.
overfed-logged = In the plan: flush { $plants } first, then no feed until { $day }.
overfed-still = { $plants } got too much feed: flush first, with plenty of clear water. No feed until { $day }.
overfed-told = That was too much. Flush now: plenty of clear water through the pot, and once more half an hour later. Then pause the feed, and look for brown tips.
overfed-undo = Not poured yet, or other plants? Send “undo”, then say which.
reading-still = { $plants }: the last runoff was over the limit, so no feed until it reads less. Flush with clear water first.
repot-still = { $plants }: repotted lately, so no feed until { $day }, or until new roots show. Give clear water instead.
rescue-still = { $plants } { $n ->
    [many] recover
   *[one] recovers
}: no feed until { $day }. Give clear water instead.
rescue-remind = remind me to look at { $plant } on { $day } { $month ->
    [m1] january
    [m2] february
    [m3] march
    [m4] april
    [m5] may
    [m6] june
    [m7] july
    [m8] august
    [m9] september
    [m10] october
    [m11] november
   *[m12] december
}
rescue-say-flushed = flushed { $plant }
cautions-none = Nothing more to mind here.
caution-never-feed-burnt-roots = Never feed damaged roots: wait for new tips.
caution-keep-apart = Rot spreads with splashing water: keep it apart.
caution-clean-blade = A clean blade for each plant.
caution-tepid-water = Lukewarm water, never ice-cold.
caution-not-seen = I judge from words alone: causes look alike and join.
sign-mushy-roots = soft roots
sign-sudden-after-cold = all at once after cold
sign-one-old-leaf = only the oldest leaf
sign-dry-light-pot = a dry, light pot
sign-white-crust = white crust
sign-brown-root-tips = brown root tips
sign-medium-stays-wet = medium that stays wet
sign-new-growth-sound = sound new growth
sign-many-plants = many plants at once
sign-roots-gone = roots gone
sign-leaves-gone = leaves that drop
sign-black-spreading = black that spreads
sign-rot = rot
sign-crown-rot = crown or stem rot
sign-leaf-rot = a wet or growing spot on the leaf
sign-sour-smell = a sour smell
sign-firm-roots = firm roots
sign-watered-little = little water
sign-watered-well = water as usual
sign-sheds-in-rest = a kind that drops leaves when it rests
sign-leaf-tips-brown = brown leaf tips
sign-wilting-wet = wilting in a wet pot
sign-wilting-dry = wilting in a dry pot
sign-pleated-leaves = wrinkled leaves
sign-yellow-old-leaf = yellow lower leaves
sign-sunken-patches = sunken patches
sign-fed-strong = fed over the label
sign-not-fed = not fed lately
sign-flush-due = a month without clear water
sign-flush-overdue = half a year without clear water
sign-high-ec = high EC in the pot
sign-low-ec = low EC in the pot
sign-holds-salts = a medium that holds salts
sign-winter = winter
sign-old-medium = old medium
sign-young-plant = a young plant
why-rescue-sign = { $answer ->
    [no] no { $sign }
   *[other] { $sign }
}: { $points } { $side } { $cause }
why-rescue-flush = flush { $volume }: { $passes } times the volume of a pot of { $pot } cm{ $count ->
    [1] {""}
   *[other] , { $count } plants
}
why-rescue-pause = { $days } days without feed{ $share ->
    [none] , and none before new roots
    [full] , then the usual
   *[other] , then { $share } of the usual ({ $usual } of full strength, less what season and medium take off)
}

# --- comparing feeds ---
compare-none = It takes feeds on your shelf to compare. Put them there first, like: my powder is 20-20-20, label 1 g per litre, call it blue tub.
compare-one = { $name } is the only feed on your shelf. Add another, like: my liquid is 7-7-7, 4 ml per litre, call it green bottle.
refuse-compare-n = { $n } mg/l N cannot be compared. Send up to { $most }, like: compare at 100 ppm N.
refuse-compare-volume = { $volume } l is more than any home needs. Send it like: what do 100 litres cost.
compare-cheapest = { $name } is the cheapest: { $cost } for { $volume } l.
compare-cost-one = { $cost } for { $volume } l with { $name }.
compare-not-ordered = The prices are in different money, so I cannot say which is cheaper.
compare-cannot = { $costs ->
    [0] I cannot say what they cost yet.
    [1] Only one has its numbers, so I cannot say which is cheaper.
    [2] They cost the same.
   *[other] The cheapest two cost the same.
}
compare-all = Of those I know only { $name }, so this is all of your shelf.
compare-at = In { $volume } l at { $n } mg/l N, { $strength } of full strength:
compare-line = - { $name }: { $cost ->
    [none] {""}
   *[other] { $cost }, {""}
}{ $amount ->
    [none] no nitrogen, so not comparable
   *[other] { $amount }
}{ $lacks ->
    [none] {""}
   *[other] ; label shows no { $lacks }
}{ $micro ->
    [yes] ; micro elements not all shown
   *[no] {""}
}{ $forms ->
    [none] {""}
   *[other] ; { $forms }
}
compare-amount-both = { $ml } ml ({ $g } g)
compare-per-money = For 1 { $currency } { $name } brings { $elements }.
compare-currency-none = unit of money
compare-form-nitrate = mostly nitrate, good in bark
compare-form-much-urea = mostly urea, slow in bark
compare-salt = Salt for the same nitrogen (salt index for 1 % N, lower burns less): { $feeds }{ $least ->
    [none] { $count ->
        [1] .
       *[other] ; their labels do not tell which is lower.
    }
   *[other] ; least with { $least }.
}
compare-salt-one = { $name } { $index }
compare-salt-missing = The salt index of { $names } is missing: no salts that I have figures for make that label.
why-compare-salt = salt index = the indices of the salts times their shares; where the label names no salts, all mixes of salts that make it are tried
compare-powder-liquid = Powder and liquid are compared by the nitrogen they bring, not by the size of the pack.
compare-missing-price = The price of { $name } is missing. Send it like: { $name } costs 12 € for 500 { $unit }
compare-missing-pack-size = The size of the pack of { $name } is missing. Send it like: { $name } costs { $price } for 500 { $unit }
compare-missing-currency = The money of { $name } is missing. Send it like: { $name } costs { $price } €
compare-missing-density = The density of { $name } is missing. Send it like: density of { $name } is 1.2 kg/l
compare-missing-nitrogen-forms = For bark: what the nitrogen is made of is not known for { $names }. Send it like: { $first } has 8 % nitrate, 4 % ammonium, 0 % urea
why-compare-product = product = nitrogen wanted × litres ÷ (10 × % N on the label)
why-compare-cost = cost = price × product ÷ pack
why-compare-form = { $name }: { $form }

# --- readings of the ready feed ---
choice-meter-us = my meter shows { $value } µS
choice-meter-ppm = my meter shows { $value } ppm
ask-meter-unit = { $value } of what? Meters show mS/cm, µS/cm or ppm.
ask-meter-feed = That is EC { $ec } mS/cm at 25 °C. What feed is it? Send its numbers, like: 20-20-20.
# What dosing cannot work out; `refuse-` and the code of `Impossible`.
refuse-figures = I cannot work with these figures. Send them again, one by one.
refuse-solution-strong = That is too strong to work out. Send the ready feed, not the stock.
refuse-nutrients-many = { $mg_l } mg/l is more than water can hold. Look at the label again.
refuse-temperature = Water of { $temp } °C cannot be. Send 0 to 50 °C, like: my meter says 0.9 mS at 18 °C.
refuse-reading-range = { $ec } mS/cm cannot be: { $most } is more than sea water. If your meter shows µS/cm, send it like: my meter says 900 µS.
refuse-reading-negative = No meter shows { $value } of anything. Rinse it, measure again and send it like: my meter says 0.9 mS.
refuse-meter-temperature = A meter that does not correct to 25 °C needs the temperature. Send it like: my meter says 0.9 mS at 18 °C.
refuse-meter-unit = { $unit } is no unit I know. Meters show mS/cm, µS/cm or ppm: send it like: my meter says 0.9 mS.
refuse-hardly-conducts = This feed hardly conducts, as urea does: no meter can tell its strength. Weigh it.
refuse-feed-under-water = The feed reads { $reading } mS/cm, less than its water with { $water }. Measure both again, the water alone first.
refuse-thinning-water = Water of { $water } mS/cm cannot bring it down to { $wanted }. Take rain or reverse osmosis water.
refuse-supplement-neither = It brings neither calcium nor magnesium. Name one that does.
refuse-water-ion-amount = { $ion } { $mg_l } mg/l cannot be. Look at the report again.
refuse-sea-water = Sodium { $na } mg/l is more than sea water holds ({ $most }). Was it another unit?
refuse-water-imbalance = One figure of this report is wrong: { $cations } meq/l of cations against { $anions } of anions, { $percent } % apart; up to 10 % is usual. { $side ->
    [anions] Anions
   *[cations] Cations
} are short by what { $mg_l } mg/l of { $ion } would be. Check it, or go on with its hardness alone: my tap is { $hardness } dH.
choice-water-nearest = my tap is { $hardness } dH
refuse-water-too-salty = This water holds more salt than any plant bears. Take rain or reverse osmosis water.
refuse-water-ions = I cannot use { $ions }. Send Ca, Mg, Na, K, HCO3, SO4, Cl and NO3.
refuse-water-nothing-known = I know too little of this water. Send its hardness, its EC or a report, like: my tap is 14 dH.
refuse-water-ec-range = A water of { $ec } mS/cm is beyond fresh water (0 to { $most }). Is it µS/cm? Send it like: my tap is 400 µS.
refuse-water-hardness-range = { $what ->
    [alkalinity] An alkalinity
   *[hardness] A hardness
} of { $mg_l } mg/l is beyond fresh water (0 to { $most }). Send it like: my tap is 14 dH.
refuse-water-contradiction = EC { $ec } mS/cm and that { $what } cannot both be: the { $what } alone makes { $least }. Send the one you trust.
refuse-blend-target = { $target } cannot be reached. Send a figure of 0 or more, like: mix tap and RO to 6 dH.
refuse-blend-volume = { $volume } l cannot be mixed. Send how much you want, like: 5 l.
report-in-part = Used as far as it goes: { $lacks ->
    [anions] its anions are { $percent } % short of its cations, so some of them are not listed.
    [cations] its cations are { $percent } % short of its anions, so some of them are not listed.
   *[ions] calcium or bicarbonate is not listed.
}
meter-over = Too strong{ $plants ->
    [none] {""}
   *[other] {" "}for { $plants }
}: { $factor } times the most to give.
meter-unsure = Perhaps too strong{ $plants ->
    [none] {""}
   *[other] {" "}for { $plants }
}: up to { $high } times the most to give.
meter-under = Not too strong{ $plants ->
    [none] {""}
   *[other] {" "}for { $plants }
}.
meter-water-alone = It is the water, not the feed: with EC { $own } it is over the { $most } mS/cm that these plants bear by itself.
meter-water-adds = The feed is as meant; with the EC { $own } of your water it comes over the { $most } mS/cm that these plants bear.
up-to = up to { $high }
meter-anew = { $instead ->
    [yes] Mix it
   *[no] Or mix it
} anew{ $water ->
    [pure] {" "}with rain or reverse osmosis water
   *[own] {""}
}, with at most { $grams } g of feed a litre.
meter-add = { $sure ->
    [yes] Add
   *[no] To be safe, add
} { $litres } of { $water ->
    [pure] rain or reverse osmosis water
   *[own] your water
} to { $to ->
    [none] each litre
   *[other] these { $to }
}: that brings it to EC { $ec } mS/cm.
meter-means = EC { $ec } mS/cm at 25 °C{ $water ->
    [none] {""}
   *[other] , { $water } of it your water
}: N { $n } mg/l, from { $grams } g of feed a litre.
meter-meant-less = That is { $share } % of { $whose ->
    [said] what you meant to dissolve
   *[given] the dose I gave
}: weaker than meant.
meter-meant-more = That is { $share } % of { $whose ->
    [said] what you meant to dissolve
   *[given] the dose I gave
}: stronger than meant. Check scale and volume.
meter-meant-same = That is { $share } % of { $whose ->
    [said] what you meant to dissolve
   *[given] the dose I gave
}: it can well be right.
meter-meant-fine = That is { $share } % of { $whose ->
    [said] what you meant to dissolve
   *[given] the dose I gave
}: as meant, as far as a meter can tell.
meter-scale-unknown = ppm is 500, 640 or 700 for 1 mS/cm, by the meter: say which, like “on the 500 scale”.
meter-unit-taken = Taken as mS/cm.
meter-temperature = Most meters correct to 25 °C; yours may not, so both are counted.
meter-water-unknown = Your water is not on record, so this is the most it can be. Send it like: my tap is 0.4 mS.
meter-water-estimated = Your water's own EC is estimated from its hardness. Tell me its EC for a better figure, like: my tap is 0.4 mS.
meter-forms-unknown = A range, as the label I know shows no forms of nitrogen (nitrate, ammonium, urea).
convert-meter = { $value } { $unit } is { $kind ->
    [ms] {""}
   *[other] { $ec } mS/cm;{" "}
}{ $ppm }{ $kind ->
    [cf] .
   *[other] ; CF { $cf }.
}
convert-on-scale = { $value } { $unit } on the { $scale } scale
convert-ppm-unit = ppm on the { $scale } scale
convert-ppm-open = { $value } ppm is { $each }.
convert-oxide = { $value } { $unit } { $of } is { $result } { $unit } { $to } ({ $oxide } × { $factor } = { $element }).
convert-oxide-none = { $of } and { $to } are not two names of one thing. I turn P2O5 into P, K2O into K, CaO into Ca, MgO into Mg, and back.
pour-together = Together { $volume } at EC { $ec } mS/cm.
pour-thinned = Add { $add } of { $water }: that makes { $whole } at EC { $ec } mS/cm.
most-ec = At most EC { $most } mS/cm in the ready feed, your water counted{ $plants ->
    [none] : that holds for most orchids; name the plant for its own.
   *[other] , for { $plants }. Less does no harm.
}
most-ec-source = Where that is from: { $source }.
brings-over = { $sure ->
    [yes] Too much
   *[no] Perhaps too much
}: the most is { $most } { $unit } in { $volume }.
nitrogen-over = Too much{ $plants ->
    [none] {""}
   *[other] {" "}for { $plants }
}: at most { $most } mg/l N{ $what ->
    [ammonium] {" "}of it as ammonium
   *[all] {""}
}.
nitrogen-perhaps = Too much{ $plants ->
    [none] {""}
   *[other] {" "}for { $plants }
} if your figure counts nitrogen (N): at most { $most } mg/l N{ $what ->
    [ammonium] {" "}as ammonium
   *[all] {""}
}.
nitrogen-under = Not too much{ $plants ->
    [none] {""}
   *[other] {" "}for { $plants }
}: the most is { $most } mg/l N{ $what ->
    [ammonium] {" "}as ammonium
   *[all] {""}
}.
nitrogen-as-ion = { $value } mg/l { $ion } is { $n } mg/l N; counted as nitrogen it is { $value } mg/l N.
nitrogen-ammonium = At least half of the nitrogen as nitrate, better three quarters (Wang, HortScience).
why-meter-difference = feed = what the meter shows less the water's own, over what a gram a litre adds in that water
why-meter-temperature = brought to 25 °C, about 2 % for a degree
why-meter-scale = ppm over the meter's scale is mS/cm
why-meter-dilution = water to add = volume × (shown − wanted) / (wanted − water's own)
why-meter-ceiling = the most for the ready feed of these plants

# --- reports, suitability, mixing waters, calcium and magnesium ---
choice-water-suits = is my water good for my plants?
choice-water-hard = my tap is 14 dH
choice-water-soft = my tap is 5 dH
ask-reach-unit = That feed is measured in { $unit }: how many { $unit } do you have?
ask-how-hard = How hard? Send it like: my tap is 18 dH. The supplier’s page has it, or a test strip.
ask-report-unit = I read reports in mg/l, mmol/l or meq/l. Send it like: Ca 80, Mg 12, HCO3 240, Na 20, Cl 35 mg/l.
report-ions = From its report: { $ions } mg/l.
report-balance = Its charges balance within { $percent } %.
why-water-report = hardness from calcium and magnesium, alkalinity from bicarbonate, EC from all ions
ask-water-figures = I know too little of your water. Send its hardness, its EC or a report, like: my tap is 14 dH; my tap is 0.5 mS; Ca 80, Mg 12, HCO3 240 mg/l.
suits-good = Good{ $plants ->
    [none] {" "}for orchids
   *[other] {" "}for { $plants }
}.
suits-usable = Usable{ $plants ->
    [none] {" "}for orchids
   *[other] {" "}for { $plants }
}, not ideal.
suits-poor = Not good{ $plants ->
    [none] {" "}for orchids
   *[other] {" "}for { $plants }
}.
suits-good-usable = Good to usable{ $plants ->
    [none] {" "}for orchids
   *[other] {" "}for { $plants }
}.
suits-good-poor = It depends{ $plants ->
    [none] {""}
   *[other] {" "}for { $plants }
}: I know too little of this water.
suits-usable-poor = Usable at best{ $plants ->
    [none] {" "}for orchids
   *[other] {" "}for { $plants }
}, perhaps not good.
suits-finding = { $quantity ->
    [ec_ms_cm] EC { $value } mS/cm
    [hardness_mg_l_caco3] Hardness { $value } °dH ({ $caco3 } mg/l CaCO3)
    [alkalinity_mg_l_caco3] Alkalinity { $value } °dH ({ $caco3 } mg/l CaCO3)
    [na_mg_l] Sodium { $value } mg/l
    [cl_mg_l] Chloride { $value } mg/l
    [sar] Sodium adsorption ratio { $value }
    [cl_meq_l] Chloride { $value } meq/l
    [hco3_meq_l] Bicarbonate { $value } meq/l
   *[nitrate_n_mg_l] Nitrate nitrogen { $value } mg/l
}{ $good ->
    [none] .
   *[other] : good up to { $good }, bearable to { $most }.
}
suits-thin = Mixed with rain or reverse osmosis water it is good: { $percent } % of this, the rest pure.
suits-pure = It brings no calcium or magnesium: the feed has to.
suits-range = A range, as only some figures of it are known. A water report would tell.
suits-limits = Limits for { $class_ ->
    [sensitive] sensitive roots
    [hungry] hungry plants
   *[other] most orchids
}: growers' figures, no trial gives any.
blend-taken = With { $percent } % { $water } in the can it is { $values }; the amount of feed stays the same.
blend-unknown = Same amount of feed. What { $percent } % { $water } makes of your water I cannot say: send its hardness, like: my tap is 14 dH.
mix-parts = { $first_percent } % { $first } with { $second_percent } % { $second }: { $values }.
ask-mix-unit = In which unit? Send it like: mix tap and RO to 6 dH, or: to 0.3 mS.
ask-mix-figure = What is your { $water } like? Send { $quantity ->
    [ec_ms_cm] its EC, like: my tap is 0.5 mS
    [na_mg_l] its report, like: Ca 80, Mg 12, HCO3 240, Na 20, Cl 35 mg/l
   *[other] its hardness, like: my tap is 14 dH
}.
mix-waters = { $first ->
    [none] Only { $second_water }, { $second }
   *[other] { $second ->
        [none] Only { $first_water }, { $first }
       *[other] { $first } of { $first_water } and { $second } of { $second_water }
    }
}.
mix-reached = That makes { $quantity ->
    [ec_ms_cm] EC { $value } mS/cm
    [hardness_mg_l_caco3] { $value } °dH
    [alkalinity_mg_l_caco3] an alkalinity of { $value } °dH
   *[na_mg_l] sodium { $value } mg/l
}.
mix-nearest = These two cannot make { $quantity ->
    [ec_ms_cm] EC { $target } mS/cm: the nearest is { $value }.
    [hardness_mg_l_caco3] { $target } °dH: the nearest is { $value }.
    [alkalinity_mg_l_caco3] an alkalinity of { $target } °dH: the nearest is { $value }.
   *[na_mg_l] sodium { $target } mg/l: the nearest is { $value }.
}
mix-no-calcium = It brings hardly any calcium or magnesium: the feed has to.
mix-check = Check it with the meter before you add feed.
why-water-blend = first part = (wanted − second) / (first − second)
supplement-enough = Nothing missing: water and feed bring enough calcium and magnesium for N { $n } mg/l.
supplement-short = { $sure ->
    [yes] Missing
   *[no] Perhaps missing
}: { $what } (feed of N { $n } mg/l).
supplement-gap = { $element ->
    [Ca] calcium
   *[Mg] magnesium
} { $mg_l } of { $target } mg/l
supplement-water-unknown = Your water is not on record, so none is counted from it. Send it like: my tap is 14 dH.
supplement-fed = Your feed itself brings { $what } mg/l.
supplement-none = { $fed ->
    [yes] Nothing else on your shelf brings the rest.
   *[no] Nothing on your shelf brings it.
} It takes { $kind ->
    [Ca] calcium nitrate, or a supplement with calcium
    [Mg] magnesium sulphate (Epsom salt), or a supplement with magnesium
   *[both] a supplement with calcium and magnesium, or some tap water in the mix
}. Send me its label and I dose it.
supplement-dose = { $amount } { $unit } of { $product } in { $volume }: brings { $brings } mg/l, EC up to { $ec } mS/cm in all.
supplement-cut-ec-ceiling = Less than would fill it: more would pass the EC your plants bear.
supplement-cut-nitrogen-ceiling = Less than would fill it: its nitrogen would pass what your plants bear.
supplement-no-room-ec-ceiling = No room for a supplement: water and feed alone reach the EC your plants bear. Feed weaker, or use purer water.
supplement-no-room-nitrogen-ceiling = No room for a supplement with nitrogen: the feed brings all your plants bear. Feed weaker, or take one without nitrogen.
supplement-left = It leaves { $what } short: take one that brings that too.
supplement-how = Put it into the full can after the feed, never together as concentrates. Its nitrogen counts as feed.
why-supplement-target = { $element } { $mg_l } mg/l wanted at this nitrogen

# --- pictures ---
picture-missing = (Pictures cannot be drawn here: the operator has to install what draws them.)
picture-north = I do not know where you live, so the seasons are those of the north. Send it like: I live in Porto.
picture-year-head = { $year }, { $count } { $count ->
    [one] plant
   *[other] plants
}: until today what was done, then what is to come.
picture-year-line = - { $plants }: { $parts }.
picture-year-part = { $what } { $months }
picture-year-alt = The year { $year } as a table: { $count } { $count ->
    [one] row
   *[other] rows
} of plants by month, with what each got and will get
picture-cell = { $cell ->
    [fed] fed
    [watered] clear water given
    [feed] to feed
    [less] to feed less
    [clear] clear water only
    [rest] rests
    [flushed] flushed
    [differ] they differ
   *[blank] nothing on record
}
picture-salts-unit = mS/cm in the wet pot
picture-salts-between = { $low } to { $high }
picture-salts-limit = limit { $limit }
picture-salts-lane = { $kind ->
    [fed] fed
    [clear] clear water
    [flush] flushed
   *[reading] runoff, mS/cm
}
picture-salts-alt = Salts in the pot of { $plant }{ $first ->
    [none] {""}
   *[other] {" "}since { $first }
}: now about { $ec } mS/cm, limit { $limit }
picture-card-amount = { $amount } { $unit ->
    [tsp] tsp
   *[other] { $unit }
}
picture-card-of = of { $product } in { $volume }
picture-card-heading = { $part ->
    [measure] Measure
    [why] Worked out from
   *[mind] Mind
}
picture-card-sum = in all { $strength } of full strength
picture-card-alt = A card to share: { $amount } { $of }
