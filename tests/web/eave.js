// The demo roof's eave A by touch, as the crew does it: two readings, the pitch, every step and cut.

/// A length in words, "8 ft 3 1/8 in", as feet, inches and sixteenths.
function parts_of(words) {
  const found = words.match(/(?:(\d+) ft ?)?(?:(\d+)(?= |\b))?(?: ?(\d+)\/(\d+))? in/);
  const [, feet, inches, over, under] = found ?? [];
  return [Number(feet ?? 0), Number(inches ?? 0), over ? (16 * over) / under : 0];
}

export async function read_eave_a(tablet) {
  await tablet.tap_all('demo', 'edge A');
  await tablet.key_in(46, 0, 4);
  await tablet.tap('keep');
  await tablet.key_in(46, 0, 3);
  await tablet.tap('keep');
  await tablet.tap_all('digit 5', 'keep');
}

/// Says that all is safe to go up today.
export async function pass_gate(tablet) {
  for (const check of ['anchors', 'ladder', 'wires', 'wind', 'wet', 'heat']) {
    await tablet.tap(`yes ${check}`);
  }
  await tablet.tap_all('watcher', 'letter B', 'send', 'hospital', 'letter E', 'send', 'go up');
  if ((await tablet.names()).includes('go on')) {
    await tablet.tap('go on');
  }
}

/// Goes on one step: cuts the card's piece, answers the check with practice's value, or reads what
/// is left. False when the screen asks for nothing more.
export async function do_next(tablet) {
  const names = await tablet.names();
  const words = (await tablet.words()).join(' | ');
  if (names.includes('below')) {  // the black button first goes to what is below the fold
    await tablet.tap('below');
  } else if (names.includes('cut')) {
    await tablet.tap('cut');
  } else if (names.includes('yes anchors')) {
    await pass_gate(tablet);
  } else if (names.includes('all so')) {
    await tablet.tap('all so');
  } else if (names.includes('tick')) {
    await tablet.tap('tick');
  } else if (names.includes('name Foreman')) {
    await tablet.tap('name Foreman');
  } else if (words.includes('the plan expects')) {
    await tablet.key_in(8, 3, 2);
    await tablet.tap('keep');
  } else if (names.includes('field inches')) {
    await tablet.key_in(...parts_of(words.match(/at least ([^|.,]*in)/)?.[1] ?? '0 in'));
    await tablet.tap('answer');
  } else if (names.includes('digit 0')) {
    for (const digit of words.match(/at least (\d+)/)?.[1] ?? '0') {
      await tablet.tap(`digit ${digit}`);
    }
    await tablet.tap('answer');
  } else if (names.includes('answer')) {
    await tablet.tap('answer');
  } else {
    return false;
  }
  return true;
}

export async function finish_eave(tablet) {
  for (let steps = 0; steps < 200; ++steps) {
    if (!(await do_next(tablet))) {
      return steps;
    }
  }
  throw new Error('the eave never ended');
}
