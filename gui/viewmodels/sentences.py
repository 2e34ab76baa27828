"""What the running test and its tables say in English, sentence by sentence: marked here, for the window to say it too.

A name in braces stands for any words; `retold` puts them into the other language as they are, or as far as they are
known themselves. `tests/gui/test_words.py` lets the test speak and holds what it says to these.
"""

from __future__ import annotations

from gui.words import mark

SENTENCES = (
    mark("The test is complete. Put the building back: seals off, flames on, dampers and alarms as they were."),
    mark("The test has ended before it was complete; what was read is kept."),
    mark("Ready to test."),
    mark("Waiting for the instruments to answer."),
    mark("Waiting for the building to come to rest."),
    mark("Reading the zero-flow pressure before the points: {progress}. Keep the fan covered."),
    mark("Reading the zero-flow pressure again: {progress}. Keep the fan covered."),
    mark("Raising the fan gently towards {goal}. Watch sheeting and ceilings."),
    mark("Fan at full speed towards {goal}. Look for an open window or door."),
    mark("Going to {goal}; waiting until the pressure stands."),
    mark("Holding {goal}, averaging: {progress}. Keep doors and windows closed."),
    mark("Holding {goal}. Seal, look, or ask for another pressure."),
    mark("Bringing the fan to rest."),
    mark("Going on to the next step."),
    mark("{done} s of {whole} s"),
    mark("The point is begun again."),
    mark("The test goes on from the beginning of the interrupted step."),
    mark("The fan is at rest."),
    mark("Turn the fan off."),
    mark("The test was ended before it began."),
    mark("The test was ended by hand; what was read is kept."),
    mark("The gauge went silent; the record begins again."),
    mark("Go on today"),
    mark("Cover it each time"),
    mark("Leave these records out"),
    mark("It is mended: check again"),
    mark("Go on all the same"),
    mark("All of this is so"),
    mark("Do not test"),
    mark(
        "Before the fan starts: every flame is out and nothing can fire by itself; ashes are cold, removed or "
        "covered; no asbestos, mould or loose sheeting lies in the path of the air; everybody in the building "
        "knows of the test."
    ),
    mark(
        "The fan can draw flue gas into rooms and lift ceilings and sheeting. Local codes and licensed practice "
        "decide who may do this and how; this list does not replace them."
    ),
    mark("The safety questions were answered: do not test."),
    mark("Cover the fan so that no air can pass through it."),
    mark("The fan is covered"),
    mark("{doubts} Go on today?"),
    mark("The test was ended before the points: today is not the day."),
    mark("Take the cover off the fan. Keep all doors and windows to the outside closed."),
    mark("The fan is open"),
    mark("Cover the fan again for the closing zero-flow pressure."),
    mark("Take the cover off the fan for the point once more."),
    mark("Zero-flow records between the points would bring next to nothing today and are left out."),
    mark(
        "In this wind {count} zero-flow records between the points pay. The fan stops for each, and somebody has "
        "to cover it and take the cover off again."
    ),
    mark("The fan turns by itself to {direction}. Look whether the outdoor hose lies out of its jet."),
    mark("The hose lies well"),
    mark(
        "Turn the fan round to {direction}. Lay the hoses for this direction and keep the outdoor end out of the "
        "fan's jet."
    ),
    mark("The fan is turned"),
    mark("The fan reaches {pressure} Pa; higher targets were left out."),
    mark("The fan reaches {pressure} Pa; the readings that are left are taken at {lower} Pa."),
    mark("Range {name} is fitted"),
    mark("Range {name} stays fitted"),
    mark("The points before were read with range {name}"),
    mark("{found} Fit range {name} while the fan stands still."),
    mark("{found} Range {name} was not fitted."),
    mark("Cover the fan for a zero-flow record between the points."),
    mark("Take the cover off the fan again for the next points."),
    mark("It stays so: strike the points before"),
    mark("It is put back: strike the points after"),
    mark("Keep all points"),
    mark("Begin this direction again"),
    mark(
        "The computer slept for {time}. Look again: windows and outside doors closed, seals in place, hoses "
        "where they were."
    ),
    mark("All is as it was"),
    mark("Cover the fan: the zero-flow pressure is read once more."),
    mark("The fan was stopped. Fit flow range {name}; the point is then begun again."),
    mark("{sentence} The fan was stopped: go and look. What became of it?"),
    mark(
        "{sentence} The fan was stopped. It changed before: a flap or damper that opens with the pressure does so, "
        "and then all points belong to the house."
    ),
    mark("{sentence} The fan was stopped: put it right; the point is then begun again."),
    mark("{sentence} The fan was stopped."),
    mark("It is put right: go on"),
    mark("Nothing was wrong: go on"),
    mark("A point without flow through the fan is left out: look at the hose of the flow element."),
    mark("no flow through the fan"),
    mark("One point more, at {pressure} Pa: two stand further apart than the method allows."),
    mark(
        "The pressure comes to {reached} Pa; {goal} Pa was wanted. Is a door, window or damper "
        "open, or something before the fan? If not, the points go up to what it reaches, and the flow at 50 Pa is "
        "extrapolated."
    ),
    mark("Take the points up to {pressure} Pa"),
    mark("It is shut now: try once more"),
    mark("Flow range {was} was fitted last; the rig now says {fitted}. Which one is fitted?"),
    mark("Cover the fan: after such a gap the zero-flow pressure is read once more."),
    mark("The fan still blows, at {pressure} Pa: turn it down and switch it off."),
    mark("The pressure passed {pressure} Pa. The fan was stopped."),
    mark("The pressure stayed above {pressure} Pa. The fan was stopped."),
    mark("The pressure climbed fast towards {pressure} Pa. The fan was stopped."),
    mark("The gauge went silent. The fan was stopped; look at cable and battery."),
    mark("The gauge repeats {value} Pa unchanged. The fan was stopped; look at gauge and hose."),
    mark("The fan drive does not answer. It stops by itself; look at its cable."),
    mark("The pressure goes the wrong way. The fan was stopped; look whether hoses or fan are turned round."),
    mark("The fan runs and no pressure builds up. It was stopped; look at hoses, doors and the fan's cover."),
    mark(
        "This flow should give far more pressure. The fan was stopped: a hose is off, a door is open, or another flow "
        "range is fitted than entered."
    ),
    mark(
        "The fan moves what took {pressure} Pa and more before. It was stopped: something was opened, or the "
        "gauge does not feel the pressure."
    ),
    mark("The battery of this computer is at {left}: the fan was stopped. Plug it in, then go on."),
    mark("The program was held up for {seconds} s and did not steer. The fan was stopped."),
    mark("Raising the fan a little to see whether every hose answers."),
    mark("The envelope pressure goes the wrong way: its hose is on the wrong input, or the fan is turned."),
    mark("No pressure moves: the fan is covered, or does not turn, or both hoses are off."),
    mark("Air flows and the envelope pressure does not move: its hose is off, blocked or frozen, or a door is open."),
    mark(
        "The envelope pressure moves and the flow element does not: its hose is off, or the flow range is far "
        "too large."
    ),
    mark("Turn the fan down slowly and switch it off."),
    mark("The fan was stopped by hand."),
    mark("{missing} of {count} safety questions are not answered."),
    mark("The answers are older than {hours} hours: answer again."),
    mark("The fan may start."),
    mark("The fan may start: {limits}."),
    mark("pressurize only"),
    mark("pressurize only and at most {cap} Pa"),
    mark("at most {cap} Pa"),
    mark("Stopped by hand."),
    mark("No test possible, since this is not so: “{text}”"),
    mark("Holding {goal} for {time} min: {flow}. Seal, look, or ask for another pressure."),
    mark("The test ended by a fault of the program ({kind}: {error})."),
    mark("It did not come back within {seconds} s."),
    mark("{reason} It did not come back within {seconds} s."),
    mark("The pressure is kept at or below {cap} Pa; higher targets were left out."),
    mark("The lowest target was raised to {target} Pa: five times the zero-flow pressure."),
    mark("The hoses were not checked before the points: {reason}."),
    mark("{wanted} Pa was asked for; the safety answers allow {allowed} Pa."),
    mark("Answered: {choice}."),
    mark("Only a point of the running direction can be taken again."),
    mark(
        "{gap} Look again: windows and outside doors closed, seals in place, hoses where they were, the fan set "
        "to {outfit}. If anything is not, put it right or begin again."
    ),
    mark("The test was interrupted with {count} points taken; nothing was recorded for {time}."),
    mark(
        "With more speed the envelope pressure grows as that of a flow element does, and the flow element grows "
        "as a house does: their hoses seem to be swapped."
    ),
    mark(
        "With the fan the pressure at outdoor tap {tap} moves by {moved} Pa, at the others by {others}: its hose "
        "lies in the jet of the fan. Move it to the side."
    ),
    mark("The flow element reads backwards: its hose is on the wrong side of the gauge, or the fan is turned."),
    mark("The flow element reads {value} Pa with the fan at rest: water in its hose, or the gauge wants zeroing."),
    mark("The hoses of envelope pressure and flow element are swapped."),
    mark("The pressure at outdoor tap {tap} does not move with the others: its hose is off or blocked."),
    mark("The flow element answers too slowly: its hose is pinched, or water is in it."),
    mark("The envelope pressure answers too slowly: its hose is pinched, as in a door."),
    mark("It stands at {now}, the target is {target}."),
    mark("Then look at cable and battery of the gauge."),
    mark("Then look at gauge and hose."),
    mark("Then look whether hoses or fan are turned round."),
    mark("Then look whether a hose is off or a door is open."),
    mark("Waiting for the gauge. Do not change the speed; the target is {target}."),
    mark("Turn the fan down now. {found}."),
    mark("The leakage left the line of the points before, by {change} m³/h at {pressure} Pa: {what}."),
    mark("a door, a window or a seal"),
    mark("something was closed, or a hose is at fault"),
    mark("Look at the seals, doors and windows."),
    mark("Look what was closed, and at the hoses."),
    mark("{seen}: a gust, or the outdoor hose: moved, wet, in the wind or in the fan's jet."),
    mark("{seen}: look at the hose of the flow element, and whether the flow range is the one entered."),
    mark("{seen}: a door, a window or a seal let go. Look."),
    mark("{seen}: a door or window fell shut, or a leak closed."),
    mark("{seen}: something lies before the fan, or it turns slower."),
    mark("{seen}: the fan turns faster or was cleared."),
    mark("With the fan held the pressure changed by {change} Pa and the flow by {share} %"),
    mark("{channel}: noise {noise}."),
    mark("{name}: {rate} readings a second."),
    mark("Invented data"),
    mark("With an attached garage."),
    mark("depressurize and pressurize"),
    mark("weighted line of organic correlation"),
    mark("generalized least squares with a common zero-flow error"),
    mark("assumed flow exponent of 0.65"),
    mark("q50, flow at 50 Pa, {unit}"),
    mark("n50, air changes per hour at 50 Pa, {unit}"),
    mark("qE50, flow at 50 Pa per envelope area, {unit}"),
    mark("qF50, flow at 50 Pa per floor area, {unit}"),
    mark("qE75, flow at 75 Pa per envelope area, {unit}"),
    mark("qE4, flow at 4 Pa per envelope area, {unit}"),
    mark("extrapolated: outside the pressures that were measured"),
    mark("Effective leakage area at 4 Pa, Cd 1, {unit}"),
    mark("Equivalent leakage area at 10 Pa, Cd 0.611, {unit}"),
    mark("Leakage coefficient, air of the test, {unit}"),
    mark("Leakage coefficient, reference air, {unit}"),
    mark("Flow exponent"),
    mark("Probability of meeting it"),
    mark("An adopted edition, amendments and the local authority decide which limit counts."),
    mark("Estimates by named models with their bands, not measured; none of them belongs on a certificate."),
    mark("Points is empty: paste or type the points of one direction at least."),
    mark("95 % interval"),
    mark("Mean"),
    mark("Value"),
    mark("At most"),
    mark("Share"),
    mark("Together"),
    mark("Test {number}, {day}, {stage}"),
    mark("no stage"),
)
