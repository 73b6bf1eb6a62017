import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { Provider } from 'react-redux';
import { store } from './store.ts';
import './styles/fonts.css';
import './styles/tokens.css';
import './styles/base.css';
import './styles/parts.css';
import './styles/plots.css';
import './styles/sections.css';
import './styles/print.css';
import { Workbench } from './workbench/Workbench.tsx';

// A file let go beside its door would otherwise replace the workbench with itself.
for (const type of ['dragover', 'drop'] as const) {
  window.addEventListener(type, (event) => {
    if (event.dataTransfer?.types.includes('Files') === true) event.preventDefault();
  });
}

const place = document.getElementById('workbench');
if (place === null) throw new Error('index.html needs an element with the id workbench');
createRoot(place).render(
  <StrictMode>
    <Provider store={store}>
      <Workbench />
    </Provider>
  </StrictMode>,
);
