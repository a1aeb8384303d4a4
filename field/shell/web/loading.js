// What the page shows before the program runs: loading and how far, or what failed and what to do.
// Written so that browsers too old for the program can still run it.
(function () {
  // {tag of a language: {English: what it says}}; tools/web_site puts those of assets/words here.
  var languages = PHRASES;

  /// A sentence to translate: tools/words looks for these.
  function phrase(english) { return english; }

  var words = {
    loading: phrase('Hemline is loading …'),
    so_far: phrase('Hemline is loading: {1} of {2} KB.'),
    slow: phrase('Hemline is loading: {1} of {2} KB. Nothing came for a while: look whether there is a signal.'),
    missing: phrase('A file of the program is missing on its host, or is there only in part: {1}. Load the page again in some minutes. If it stays so, tell whoever put the page there.'),
    cut: phrase('The connection was cut while Hemline was loading: {1}. Get a signal, then load the page again.'),
    blocked: phrase('This browser keeps nothing here ({1}). Leave private browsing, or allow this page to store data, then load it again.'),
    plain_http: phrase('This page came over plain http, where a browser keeps nothing safely: Hemline does not start here. Open {1} instead, or ask whoever put the page there for an https address.'),
    old: phrase('This browser is too old for Hemline ({1}). It takes Safari 15.4 (iPadOS 15.4), Chrome or Edge 86, Firefox 96, or later. Update it, or open the page on another tablet.'),
    no_webgl: phrase('This browser cannot draw here: it has no WebGL 2. Update the browser, or allow it to use the graphics chip, then load the page again.'),
    other_tab: phrase('Hemline is open in another tab. Use it there; or close it there, and it goes on here by itself.'),
    stopped: phrase('Hemline stopped ({1}). What was saved is safe. Load the page again.'),
    one_copy: phrase('Only one copy of what is saved is kept on this tablet from now on: the second one cannot be written. Back up to a file today.'),
    came_back: phrase('The browser had lost its store. The jobs came back from the second copy. Back up to a file today.'),
    mended: phrase('One of the two copies on this tablet was behind, and was mended from the other. Nothing that was saved is missing.'),
    not_saved: phrase('Something that was keyed in before is not saved. Look at the last entries of the job.'),
    tilt_refused: phrase('The tilt sensor was refused. Measure the pitch with a level and the tape; or allow motion for this page in the browser, and load it again.'),
    offline: phrase('Works without a signal now.'),
    again: phrase('Load again'),
    understood: phrase('Understood')
  };
  var said = document.getElementById('said');
  var button = document.getElementById('again');
  var language = navigator.language || 'en';
  try {
    language = localStorage.getItem('language') || language;
  } catch (problem) {
    // storage is blocked; the program says so where it matters
  }
  var started = false, failed = false, hiding = 0;

  function tr(key, values) {
    var text = (languages[document.documentElement.lang] || {})[words[key]] || words[key];
    for (var i = 0; i < values.length; ++i) {
      text = text.replace('{' + (i + 1) + '}', values[i]);
    }
    return text;
  }

  /// The language for a tag of BCP 47: that language, or the one it is a variety of ("es-MX"), or
  /// English.
  function known(tag) {
    var begins = tag.split('-')[0];
    return languages[tag] ? tag : languages[begins] ? begins : 'en';
  }

  function show(text, press, act) {
    clearTimeout(hiding);
    said.textContent = text;
    button.hidden = !press;
    if (press) {
      button.textContent = tr(press, []);
      button.onclick = act;
    }
  }

  var loading = window.loading = {
    /// Says what is going on; it stays until the next words.
    say: function (key) {
      if (!failed) {
        show(tr(key, [].slice.call(arguments, 1)));
      }
    },
    /// Says what failed and what to do; the first failure stays.
    fail: function (key) {
      if (!failed) {
        failed = true;
        show(tr(key, [].slice.call(arguments, 1)), 'again', function () { location.reload(); });
      }
    },
    /// The same in the words of the program.
    fail_in_words: function (text) {
      failed = true;
      show(text, 'again', function () { location.reload(); });
    },
    /// Says what happened, until it is dismissed.
    tell: function (key) {
      show(tr(key, []), 'understood', function () { show(''); });
    },
    /// Says it for some seconds.
    pass: function (key) {
      if (said.textContent === '') {
        show(tr(key, []));
        hiding = setTimeout(function () { show(''); }, 6000);
      }
    },
    started: function () {
      started = true;
      document.documentElement.className = 'started';
      if (button.hidden) {
        show('');
      }
    },
    language: function (code) {
      if (document.documentElement.lang !== code) {
        document.documentElement.lang = code;
        try {
          localStorage.setItem('language', code);
        } catch (problem) {
          // the words shown before the program starts then follow the browser
        }
      }
    },
    has_failed: function () { return failed; }
  };

  document.documentElement.lang = known(language);
  loading.say('loading');
  window.addEventListener('error', function (event) {
    if (event.message) {
      loading.fail('stopped', event.message);
    }
  });
  window.addEventListener('unhandledrejection', function (event) {
    loading.fail('stopped', (event.reason && event.reason.message) || String(event.reason));
  });

  /// A browser does not say which of the scripts that belong together failed to load.
  function name_missing(names, guess) {
    if (names.length === 0) {
      loading.fail('missing', guess);
      return;
    }
    fetch(names[0]).then(function (answer) {
      if (answer.ok) {
        name_missing(names.slice(1), guess);
      } else {
        loading.fail('missing', names[0]);
      }
    }, function () { loading.fail('cut', names[0]); });
  }

  function draws() {
    try {
      return Boolean(document.createElement('canvas').getContext('webgl2'));
    } catch (problem) {
      return false;
    }
  }
  var lacking = !('noModule' in document.createElement('script')) ? 'modules'
    : typeof WebAssembly !== 'object' ? 'WebAssembly'
      : !window.indexedDB ? 'IndexedDB'
        : !String.prototype.replaceAll ? 'replaceAll'
          : window.isSecureContext && !navigator.locks ? 'Web Locks' : '';
  if (lacking) {
    loading.fail('old', lacking);
  } else if (!window.isSecureContext) {
    loading.fail('plain_http', 'https://' + location.host + location.pathname);
  } else if (!draws()) {
    loading.fail('no_webgl');
  } else {
    var script = document.createElement('script');
    script.type = 'module';
    script.src = 'page.js';
    script.onerror = function () { name_missing(SCRIPTS, 'page.js'); };
    document.head.appendChild(script);
  }
}());
