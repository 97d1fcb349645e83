/** Every kind of flexure and its words: whatever imports this can show any joint. */
import '../../core/flexures/index.ts';
import '../text/everyKindText.ts';
import { useKindsCome } from './kindsCome.ts';

useKindsCome.setState({ come: 'all' });
